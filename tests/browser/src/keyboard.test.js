import assert from "node:assert/strict";
import { test } from "node:test";
import { until, withPage } from "./browser.js";
import { sound } from "./rigs.js";
import { address } from "./service.js";
import { answer, group, here, mass, share, unfold, verdictIs } from "./sheet.js";

const focused = (page, what) => page.evaluate(what);

test("the first key leads over the form to the answer",
  withPage({}, async (page) => {
    await page.goto(`${address}/${sound}`);
    await page.keyboard.press("Tab");
    assert.equal(await focused(page, () => document.activeElement.innerText), "Skip to the answer");
    assert.ok(await page.getByRole("link", { name: "Skip to the answer" }).isVisible());

    await page.keyboard.press("Enter");
    const tag = () => focused(page, () => document.activeElement.tagName);
    await until(tag, (seen) => seen === "SECTION", "no focus on the answer");
    await page.keyboard.press("Tab");
    assert.ok(await answer(page).evaluate((part) => part.contains(document.activeElement)), "the next key is in the answer");
  }));

test("a rig is checked by the keys alone",
  withPage({}, async (page) => {
    await page.goto(`${address}/`);
    const tabTo = async (where) => {
      for (let at = 0; at < 60; at++) {
        if (await where.evaluate((one) => one === document.activeElement)) return;
        await page.keyboard.press("Tab");
      }
      assert.fail("never reached");
    };

    await tabTo(mass(page));
    await page.keyboard.type("3");
    const more = group(page, "Rig and gearing").locator("summary").first();
    await tabTo(more);
    const inside = group(page, "Rig and gearing").getByLabel("Name of the rig");
    assert.ok(await inside.isHidden());
    await page.keyboard.press("Enter");
    await inside.waitFor();
    await page.keyboard.press("Tab");
    await page.keyboard.type("Slow one");
    assert.equal(await inside.inputValue(), "Slow one");
    await page.keyboard.press("Enter");

    await verdictIs(page, /^Undetermined$/);
    const link = await share(page);
    assert.equal(new URL(link).searchParams.get("vehicle.name"), "Slow one");
    await until(() => here(page), (seen) => seen === link, "the address is not the page's own link");
  }));

// Where the focus is, and whether one sees it.
const look = () => {
  const one = document.activeElement;
  const box = one.getBoundingClientRect();
  const isOutlined = (element) => {
    const style = getComputedStyle(element);
    return style.outlineStyle !== "none" && Number.parseFloat(style.outlineWidth) >= 2;
  };
  const inside = (x, y) => {
    const top = document.elementFromPoint(x, y);
    return top && (one.contains(top) || top.contains(one));
  };
  const seen = [0.1, 0.5, 0.9].some((share) => inside(box.x + Math.min(box.width / 2, 40), box.y + box.height * share));
  return {
    at: [...document.querySelectorAll("*")].indexOf(one),
    what: `${one.tagName} ${one.id || one.innerText.slice(0, 40)}`,
    isOutlined: isOutlined(one) || isOutlined(one.parentElement),
    isSeen: Boolean(seen),
  };
};

const walk = async (page) => {
  const steps = [];
  for (let at = 0; at < 600; at++) {
    await page.keyboard.press("Tab");
    const step = await page.evaluate(look);
    if (step.what.startsWith("BODY") || step.at === steps[0]?.at) return steps;
    steps.push(step);
  }
  assert.fail("the keys never come to an end");
};

for (const width of [390, 1280]) {
  test(`the keys go through the page in its order, and one sees where they are, at ${width} px`,
    withPage({ width, height: 800 }, async (page) => {
      await page.goto(`${address}/${sound}`);
      const steps = await walk(page);

      assert.ok(steps.length > 40, `${steps.length} steps`);
      assert.deepEqual(steps.map((step) => step.at), steps.map((step) => step.at).toSorted((one, other) => one - other));
      assert.deepEqual(steps.filter((step) => !step.isOutlined).map((step) => step.what), [], "not outlined");
      assert.deepEqual(steps.filter((step) => !step.isSeen).map((step) => step.what), [], "hidden by something");
    }));
}

test("every field of the unfolded form is reached",
  withPage({ height: 800 }, async (page) => {
    await page.goto(`${address}/`);
    await unfold(page);
    const kinds = "input:not([type=hidden]), select, button:not([tabindex='-1']), summary";
    const fields = await page.locator(`form :is(${kinds})`).count();

    const steps = await walk(page);
    assert.ok(fields > 100, `${fields} fields`);
    assert.equal(steps.filter(({ what }) => /^(INPUT|SELECT|BUTTON|SUMMARY)/.test(what)).length, fields);
    assert.deepEqual(steps.filter((step) => !step.isSeen).map((step) => step.what), [], "hidden by something");
  }));
