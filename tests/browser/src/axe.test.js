import assert from "node:assert/strict";
import { test } from "node:test";
import { AxeBuilder } from "@axe-core/playwright";
import { withPage } from "./browser.js";
import { states } from "./rigs.js";
import { fetchPictures, unfold } from "./sheet.js";

const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

// What the width of the window and the color scheme can change; everything else is the same in all of them.
const ofLooks = ["color-contrast", "link-in-text-block", "scrollable-region-focusable", "target-size"];

// No page has frames, so that one document is all; only what is wrong is wanted, which is faster.
const wrong = async (page, runOnly) => {
  const { violations, passes } = await new AxeBuilder({ page })
    .setLegacyMode(true)
    .options({ runOnly, resultTypes: ["violations"] })
    .analyze();
  assert.ok(passes.length > 0, "nothing was looked at");
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target).join(", ")}`);
};

for (const { name, at, says, troubles } of states) {
  test(`axe finds nothing on the page in its state "${name}"`,
    withPage({ width: 1280, color: "light", expects: troubles }, async (page) => {
      await page.goto(at);
      await page.getByRole("heading", { name: says }).first().waitFor();
      await fetchPictures(page);
      const found = { folded: await wrong(page, { type: "tag", values: tags }) };

      await unfold(page);
      found.unfolded = await wrong(page, { type: "tag", values: tags });
      for (const [width, colorScheme] of [[1280, "dark"], [390, "dark"], [390, "light"]]) {
        await page.setViewportSize({ width, height: 900 });
        await page.emulateMedia({ colorScheme });
        found[`${colorScheme}, ${width} px`] = await wrong(page, { type: "rule", values: ofLooks });
      }

      assert.deepEqual(Object.entries(found).filter(([, violations]) => violations.length > 0), []);
    }));
}
