import assert from "node:assert/strict";
import { test } from "node:test";
import { refusal, withPage } from "./browser.js";
import { burning, mistaken, sound, sure } from "./rigs.js";
import { address, dataFor, startSite } from "./service.js";
import { answer } from "./sheet.js";

for (const width of [390, 1280]) {
  test(`the pictures in the answer have names and fit at ${width} px`,
    withPage({ width }, async (page) => {
      await page.goto(`${address}/${sure}`);
      const pictures = answer(page).getByRole("img");
      const seen = await pictures.evaluateAll((all) =>
        all.map((one) => ({
          name: one.getAttribute("aria-label") ?? one.getAttribute("alt") ?? document.getElementById(one.getAttribute("aria-labelledby"))?.textContent ?? "",
          width: one.getBoundingClientRect().width,
          height: one.getBoundingClientRect().height,
          room: one.parentElement.getBoundingClientRect().width,
        })),
      );

      assert.ok(seen.length >= 3, `${seen.length} pictures`);
      assert.equal(new Set(seen.map(({ name }) => name)).size, seen.length, "each has a name of its own");
      for (const { name, width: wide, height, room } of seen) {
        assert.match(name, /\w+ \w+ \w+/);
        assert.ok(wide > 200 && height > 100 && wide <= room, `${name}: ${wide} × ${height} in ${room}`);
      }
    }));
}

for (const [name, rig] of [["sound", sound], ["burning", burning]]) {
  test(`the drawing of a ${name} rig opens by itself`,
    withPage({}, async (page) => {
      const { links } = await dataFor(`${address}/${rig}`);
      const answered = await page.goto(links.svg);

      assert.match(answered.headers()["content-type"], /^image\/svg\+xml/);
      assert.equal(await page.evaluate(() => document.documentElement.localName), "svg");
      const { width, height } = await page.locator("svg").first().boundingBox();
      assert.ok(width > 300 && height > 300, `${width} × ${height}`);
    }));
}

test("a forum post shows the picture",
  async () => {
    const { links } = await dataFor(`${address}/${sound}`);
    const forum = await startSite(() => `<img alt="Check" src="${links.png.replaceAll("&", "&amp;")}">`);
    try {
      await withPage({ origins: [forum.address] }, async (page) => {
        await page.goto(forum.address);
        const image = page.getByRole("img", { name: "Check" });
        assert.equal(await image.evaluate((one) => one.complete && one.naturalWidth), 600);
        assert.ok(await image.evaluate((one) => one.naturalHeight > 300));
      })();
    } finally {
      forum.stop();
    }
  });

test("a picture of a mistake is a picture, too",
  withPage({ expects: [refusal(422)] }, async (page) => {
    const answered = await page.goto(`${address}/v1/checks${mistaken}&form=svg`);

    assert.match(answered.headers()["content-type"], /^image\/svg\+xml/);
    assert.equal(await page.evaluate(() => document.documentElement.localName), "svg");
  }));
