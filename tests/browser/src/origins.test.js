import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { refusal, withPage } from "./browser.js";
import { sound } from "./rigs.js";
import { address, dataFor, startService, startSite } from "./service.js";

const framed = /^console error: .*Refused to (frame|display)|^console error: Framing '[^']*' violates/;
const unanswered = /^request failed: \S+ net::ERR_BLOCKED_BY_RESPONSE$/;
const crossed = /^console error: Access to fetch at '\S+' from origin '\S+' has been blocked by CORS policy/;
const failedLoad = /^console error: Failed to load resource: net::ERR_FAILED$/;
const failedFetch = /^request failed: \S+ net::ERR_FAILED$/;

let shop;
let friendly;

before(async () => {
  shop = await startSite((path) => {
    const source = new URL(path, "http://shop").searchParams.get("frame");
    return source ? `<iframe title="Check" src="${source.replaceAll("&", "&amp;")}"></iframe>` : "<p>A shop</p>";
  });
  friendly = await startService({ Embed__FrameAncestors__0: shop.address, Cors__Origins__0: shop.address });
});

after(async () => {
  await friendly?.stop();
  shop?.stop();
});

// Addresses of other services are known when the test runs, not when it is written down.
const atShop = (how, body) => () =>
  withPage({ ...how, origins: [shop.address, friendly.address] }, body)();

const show = (page, source) => page.goto(`${shop.address}/?${new URLSearchParams({ frame: source })}`);

const headings = (page) => page.frameLocator("iframe").getByRole("heading", { level: 1 });

test("a shop that may frame the card shows the verdict",
  atShop({}, async (page) => {
    await show(page, `${friendly.address}/embed${sound}`);

    await headings(page).getByText("Suitable").waitFor();
    const whole = page.frameLocator("iframe").getByRole("link", { name: "Open the whole check" });
    const { verdict, links } = await dataFor(await whole.evaluate((link) => link.href));
    assert.equal(verdict, "suitable");
    assert.equal(await whole.evaluate((link) => link.href), links.page);
  }));

test("the whole check opens from the frame in a window of its own",
  atShop({}, async (page) => {
    await show(page, `${friendly.address}/embed${sound}`);
    const opened = page.context().waitForEvent("page");
    await page.frameLocator("iframe").getByRole("link", { name: "Open the whole check" }).click();

    const own = await opened;
    await own.getByRole("heading", { level: 2, name: "Suitable" }).waitFor();
    assert.equal(await own.evaluate(() => window.opener), null);
  }));

for (const [what, source] of [
  ["the card of a service that names nobody", () => `${address}/embed${sound}`],
  ["the page of a service that names nobody", () => `${address}/${sound}`],
  ["the page of a service that names the shop", () => `${friendly.address}/${sound}`],
]) {
  test(`a shop may not frame ${what}`,
    atShop({ expects: [framed], allows: [unanswered] }, async (page) => {
      await show(page, source());

      await page.waitForLoadState("networkidle");
      assert.equal(await headings(page).count(), 0);
    }));
}

const asked = (page, from) =>
  page.evaluate(async (link) => {
    try {
      const answer = await fetch(link, { headers: { Accept: "application/json" } });
      return (await answer.json()).verdict;
    } catch (error) {
      return error.name;
    }
  }, `${from}/v1/checks${sound}`);

test("a script on another origin's page may not ask a service that does not name it",
  atShop({ expects: [crossed], allows: [failedLoad, failedFetch] }, async (page) => {
    await page.goto(`${shop.address}/`);
    assert.equal(await asked(page, address), "TypeError");
  }));

test("a script on another origin's page may ask a service that names it",
  atShop({}, async (page) => {
    await page.goto(`${shop.address}/`);
    assert.equal(await asked(page, friendly.address), "suitable");
  }));

test("a script on another origin's page is told of a mistake by a service that names it",
  atShop({ expects: [refusal(422)] }, async (page) => {
    await page.goto(`${shop.address}/`);
    const tooHeavy = `${friendly.address}/v1/checks?vehicle.massKg=500`;
    const status = await page.evaluate(async (link) => (await fetch(link)).status, tooHeavy);
    assert.equal(status, 422);
  }));
