import assert from "node:assert/strict";
import { test } from "node:test";
import { AxeBuilder } from "@axe-core/playwright";
import { refusal, withPage } from "./browser.js";
import { states } from "./rigs.js";
import { fetchPictures, unfold } from "./sheet.js";

const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

// What a color scheme can change; everything else is the same in both.
const ofColor = ["color-contrast", "link-in-text-block"];

const refused = { mistake: [refusal(422)], "not-found": [refusal(404)] };

// No page has frames, so that one document is all; only what is wrong is wanted, which is faster.
const wrong = async (page, runOnly) => {
  const { violations, passes } = await new AxeBuilder({ page })
    .setLegacyMode(true)
    .options({ runOnly, resultTypes: ["violations"] })
    .analyze();
  assert.ok(passes.length > 0, "nothing was looked at");
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target).join(", ")}`);
};

for (const { name, at, says } of states) {
  test(`axe finds nothing on the page in its state "${name}"`,
    withPage({ color: "light", expects: refused[name] }, async (page) => {
      await page.goto(at);
      await page.getByRole("heading", { name: says }).first().waitFor();
      await fetchPictures(page);
      const found = {};
      found.folded = await wrong(page, { type: "tag", values: tags });

      await unfold(page);
      for (const width of [1280, 390]) {
        await page.setViewportSize({ width, height: 900 });
        await page.emulateMedia({ colorScheme: "light" });
        found[`light ${width}`] = await wrong(page, { type: "tag", values: tags });
        await page.emulateMedia({ colorScheme: "dark" });
        found[`dark ${width}`] = await wrong(page, { type: "rule", values: ofColor });
      }

      assert.deepEqual(Object.entries(found).filter(([, violations]) => violations.length > 0), []);
    }));
}
