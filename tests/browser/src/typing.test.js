import assert from "node:assert/strict";
import { test } from "node:test";
import { until, withPage } from "./browser.js";
import { burning, sound } from "./rigs.js";
import { address, dataFor } from "./service.js";
import { answer, here, keyFigures, mass, share, verdict, verdictIs } from "./sheet.js";

// Typing again while an answer is on its way replaces the question.
const typed = {};

test("a figure that is changed changes the answer, without a submit and without losing the place",
  withPage({}, async (page) => {
    await page.goto(`${address}/${sound}`);
    const before = await keyFigures(page);

    await mass(page).click();
    await mass(page).press("ControlOrMeta+a");
    await mass(page).pressSequentially("14");
    await verdictIs(page, /^Unsuitable$/);

    assert.notDeepEqual(await keyFigures(page), before);
    assert.equal(await mass(page).evaluate((field) => field === document.activeElement), true, "the field has the focus");
    assert.equal(await mass(page).inputValue(), "14");
    await mass(page).press("Backspace");
    await mass(page).pressSequentially("2");
    assert.equal(await mass(page).inputValue(), "12", "the cursor stands behind the last digit");
  }));

test("the address follows what is typed, and a reload shows the same",
  withPage({}, async (page) => {
    await page.goto(`${address}/${sound}`);

    await mass(page).fill("14");
    await verdictIs(page, /^Unsuitable$/);
    assert.equal(here(page), await share(page));
    assert.equal((await dataFor(page.url())).verdict, "unsuitable");
    const figures = await keyFigures(page);

    await page.reload();
    assert.equal(await verdict(page), "Unsuitable");
    assert.deepEqual(await keyFigures(page), figures);
  }));

test("back leads to the page before, and forward to what was typed",
  withPage({}, async (page) => {
    await page.goto(`${address}/`);
    await page.goto(`${address}/${sound}`);
    await mass(page).fill("14");
    await verdictIs(page, /^Unsuitable$/);

    await page.goBack();
    await verdictIs(page, /^Not checked yet$/);
    assert.equal(await mass(page).inputValue(), "");

    await page.goForward();
    await verdictIs(page, /^Unsuitable$/);
    assert.equal(await mass(page).inputValue(), "14");
  }));

test("back from an answer that was submitted shows the form as it was",
  withPage({}, async (page) => {
    await page.goto(`${address}/${burning}`);
    await verdictIs(page, /^Unsuitable$/);
    await page.getByLabel("Limits that hold").selectOption({ label: "list them all" });
    await page.getByRole("button", { name: "Check this rig" }).click();
    await until(() => page.url(), (url) => url.includes("findings=all"), "the address did not follow");

    await page.goBack();
    await until(() => page.url(), (url) => !url.includes("findings=all"), "back stayed");
    await verdictIs(page, /^Unsuitable$/);
    assert.equal(await mass(page).inputValue(), "14");
  }));

test("a form that is emptied again says that nothing is checked",
  withPage({}, async (page) => {
    await page.goto(`${address}/`);
    await mass(page).fill("3");
    await verdictIs(page, /^Undetermined$/);

    await mass(page).fill("");
    await verdictIs(page, /^Not checked yet$/);
    assert.equal(await answer(page).getByRole("term").count(), 0, "no figure stays");
  }));
