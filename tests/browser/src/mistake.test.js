import assert from "node:assert/strict";
import { test } from "node:test";
import { refusal, until, withPage } from "./browser.js";
import { mistaken, sound } from "./rigs.js";
import { address } from "./service.js";
import { answer, description, field, mass, verdictIs } from "./sheet.js";

const isWrong = (where) => where.getAttribute("aria-invalid");

for (const script of [true, false]) {
  const how = { script, expects: [refusal(422)] };
  const say = script ? "with" : "without";

  test(`a mistake is told at its field, and mended there, ${say} script`,
    withPage(how, async (page) => {
      const check = page.getByRole("button", { name: "Check this rig" });
      await page.goto(`${address}/${sound}`);
      await mass(page).fill("500");
      if (!script) await check.click();
      await verdictIs(page, /^Not checked: /);

      assert.equal(await isWrong(mass(page)), "true");
      assert.equal(await mass(page).inputValue(), "500", "what was typed stays");
      assert.match(await description(mass(page)), /\b50\b/, "the message names the range");
      assert.equal(await page.locator("form [aria-invalid=true]").count(), 1, "no other field is blamed");

      await mass(page).fill("3.63");
      if (!script) await check.click();
      await verdictIs(page, /^Suitable$/);
      assert.equal(await isWrong(mass(page)), null);
      assert.doesNotMatch(await description(mass(page)), /\b50\b/);
    }));

  test(`every mistake is listed, and each entry leads to its field, ${say} script`,
    withPage(how, async (page) => {
      await page.goto(`${address}/${mistaken}`);
      await verdictIs(page, /^Not checked: /);
      assert.equal(await answer(page).getByRole("listitem").count(), 2);

      for (const [name, where] of [
        [/Mass, ready to run$/, mass(page)],
        [/\bKv$/, field(page, "Motor", "Kv")],
      ]) {
        assert.equal(await isWrong(where), "true");
        await answer(page).getByRole("link", { name }).click();
        const reached = () =>
          where.evaluate((one, scripted) => (scripted ? one === document.activeElement : one.matches(":target")), script);
        await until(reached, (seen) => seen, `${name} does not lead to its field`);
        assert.ok(await where.isVisible());
      }
    }));
}

test("a mistake in a folded part unfolds it",
  withPage({ expects: [refusal(422)] }, async (page) => {
    await page.goto(`${address}/${sound}&motor.polePairs=many`);
    await verdictIs(page, /^Not checked: /);

    const where = field(page, "Motor", "Pole pairs of the rotor");
    assert.equal(await isWrong(where), "true");
    assert.ok(await where.isVisible());
  }));
