import assert from "node:assert/strict";
import { test } from "node:test";
import { refusal, until, withPage } from "./browser.js";
import { burning, mistaken, sound, sure } from "./rigs.js";
import { address, dataFor, startSite } from "./service.js";
import { answer } from "./sheet.js";

const nameOf = (picture) =>
  picture.evaluate((one) => {
    const ids = (one.getAttribute("aria-labelledby") ?? "").split(" ");
    const words = ids.map((id) => document.getElementById(id)?.textContent ?? "").join(" ").trim();
    return words || (one.getAttribute("aria-label") ?? one.getAttribute("alt") ?? "");
  });

const isDrawn = (picture) =>
  picture.evaluate((one) => {
    const { width, height } = one.getBoundingClientRect();
    const isLoaded = one.localName !== "img" || (one.complete && one.naturalWidth > 0);
    return isLoaded && width > 200 && height > 100;
  });

for (const width of [390, 1280]) {
  test(`the pictures in the answer have names and are drawn at ${width} px`,
    withPage({ width }, async (page) => {
      await page.goto(`${address}/${sure}`);
      const pictures = await answer(page).getByRole("img").all();
      assert.ok(pictures.length >= 3, `${pictures.length} pictures`);

      const names = [];
      for (const picture of pictures) {
        await picture.scrollIntoViewIfNeeded();
        names.push(await nameOf(picture));
        await until(() => isDrawn(picture), (drawn) => drawn, `${names.at(-1)} is not drawn`);
      }
      assert.equal(new Set(names).size, names.length, "each has words of its own");
      for (const name of names) assert.match(name, /\w+ \w+ .*\d/, "the words hold figures");
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
