import assert from "node:assert/strict";
import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { test } from "node:test";
import { withPage } from "./browser.js";
import { states } from "./rigs.js";
import { fetchPictures } from "./sheet.js";

const folder = join(process.env.POWERCHECK_RESULTS ?? ".", "screenshots");

// A PNG image has its width at byte 16.
const widthOf = (image) => image.readUInt32BE(16);

for (const { name, at, says, troubles } of states) {
  test(`the state "${name}" is kept as pictures, light and dark, narrow and wide`,
    withPage({ expects: troubles }, async (page) => {
      await mkdir(folder, { recursive: true });
      await page.goto(at);
      await page.getByRole("heading", { name: says }).first().waitFor();
      await fetchPictures(page);

      for (const width of [390, 1280]) {
        await page.setViewportSize({ width, height: 900 });
        const images = [];
        for (const colorScheme of ["light", "dark"]) {
          await page.emulateMedia({ colorScheme });
          images.push(await page.screenshot({ path: join(folder, `${name}-${width}-${colorScheme}.png`), fullPage: true }));
        }
        assert.deepEqual(images.map(widthOf), [width, width]);
        assert.ok(!images[0].equals(images[1]), "dark looks like light");
      }
    }));
}
