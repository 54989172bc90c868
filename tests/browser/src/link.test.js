import assert from "node:assert/strict";
import { test } from "node:test";
import { until, withPage } from "./browser.js";
import { burning, eightPounds, sound } from "./rigs.js";
import { address } from "./service.js";
import { answer, here, keyFigures, mass, share, unitOf, values, verdict, verdictIs } from "./sheet.js";

test("a link that is handed on shows another reader the same form, verdict and link",
  withPage({}, async (page) => {
    await page.goto(`${address}/${burning}`);
    const link = await share(page);
    const seen = { values: await values(page), verdict: await verdict(page), figures: await keyFigures(page) };
    assert.ok(seen.values.length > 15);

    await withPage({ width: 390 }, async (other) => {
      await other.goto(link);
      assert.deepEqual(
        { values: await values(other), verdict: await verdict(other), figures: await keyFigures(other) },
        seen,
      );
      assert.equal(await share(other), link);
      assert.equal(here(other), link);
    })();
  }));

test("a change that is offered gives the verdict that it promises",
  withPage({}, async (page) => {
    await page.goto(`${address}/${burning}`);
    const offers = await answer(page)
      .getByRole("link", { name: /, then (suitable|limited)$/ })
      .evaluateAll((links) => links.map((link) => ({ to: link.href, says: link.innerText })));
    const distinct = [...new Map(offers.map((offer) => [offer.to, offer])).values()].slice(0, 4);
    assert.ok(distinct.length > 0, "nothing is offered");

    for (const { to, says } of distinct) {
      await page.goto(to);
      assert.equal((await verdict(page)).toLowerCase(), says.match(/suitable$|limited$/)[0], says);
    }
  }));

test("a change that is offered can be followed by a click, and taken back",
  withPage({}, async (page) => {
    await page.goto(`${address}/${burning}`);
    await answer(page).getByRole("link", { name: /, then suitable$/ }).first().click();
    await verdictIs(page, /^Suitable$/);

    await page.goBack();
    await verdictIs(page, /^Unsuitable$/);
  }));

for (const script of [true, false]) {
  test(`pounds and kilograms change what is shown and not the rig, ${script ? "with" : "without"} script`,
    withPage({ script }, async (page) => {
      await page.goto(`${address}/${eightPounds}`);
      const state = async () => ({
        link: await share(page),
        values: await values(page),
        figures: await keyFigures(page),
      });
      const unit = () => unitOf(mass(page));
      const before = await state();
      assert.equal(await unit(), "kg");

      await page.getByRole("button", { name: /^Show in lb/ }).click();
      await until(unit, (seen) => seen === "lb", "no pounds");
      assert.equal(await mass(page).inputValue(), "8");
      const { link, figures } = await state();
      assert.equal(link, before.link);
      assert.match(figures["Winding at the end of the run"], /°F/);
      assert.equal(figures["Motor current, climbing"], before.figures["Motor current, climbing"]);

      await page.getByRole("button", { name: /^Show in kg/ }).click();
      await until(unit, (seen) => seen === "kg", "no kilograms");
      assert.deepEqual(await state(), before);
    }));
}

test("a figure that is typed in pounds is the same rig as in kilograms",
  withPage({}, async (page) => {
    await page.goto(`${address}/${sound}&units=imperial`);
    await mass(page).fill("8");
    const link = await until(() => share(page), (seen) => !seen.includes("massKg=3.63&"), "the mass did not change");

    assert.equal(new URL(link).searchParams.get("vehicle.massKg"), "3.62873896");
    assert.equal(await mass(page).inputValue(), "8");
    assert.match(page.url(), /[?&]units=imperial/);
  }));
