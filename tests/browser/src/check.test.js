import assert from "node:assert/strict";
import { test } from "node:test";
import { until, withPage } from "./browser.js";
import { sure } from "./rigs.js";
import { address, dataFor } from "./service.js";
import { answer, entries, field, fill, group, here, keyFigures, share, verdictIs } from "./sheet.js";

// A figure as data and as shown, which has three digits.
const sameFigure = (shown, figure, name) =>
  assert.equal(Number.parseFloat(shown.replace(/\s/g, "")), Number(figure.toPrecision(3)), `${name}: ${shown}`);

const sameAsData = async (page) => {
  const link = await share(page);
  const data = await dataFor(link);
  const shown = await keyFigures(page);
  sameFigure(shown["Motor current, climbing"], data.loadCases.climb.motorCurrentA, "motor current");
  sameFigure(shown["Battery current, climbing"], data.loadCases.climb.batteryCurrentA, "battery current");
  sameFigure(shown["Winding at the end of the run"], data.temperatures.motorWinding.courseEndC, "winding");
  sameFigure(shown["Run time"], data.endurance.minutes, "run time");
  sameFigure(shown["Torque reserve"], data.drivetrain.torqueReserve, "torque reserve");
  await verdictIs(page, new RegExp(`^${data.verdict}$`, "i"));
  assert.match(await answer(page).innerText(), new RegExp(`assumed \\(${data.assumptions.length}\\)`));
  assert.equal(data.links.page, link);
};

for (const width of [390, 1280]) {
  for (const script of [true, false]) {
    test(`an empty form is filled in and answered at ${width} px, ${script ? "with" : "without"} script`,
      withPage({ width, script }, async (page) => {
        await page.goto(`${address}/`);
        await verdictIs(page, /^Not checked yet$/);

        for (const entry of entries) await fill(page, entry);
        await group(page, "Motor").getByText("More about the motor").click();
        await field(page, "Motor", "Winding resistance").fill("22");
        await page.getByLabel("How sure is it?").selectOption({ label: "do not ask, best figures only" });
        await page.getByRole("button", { name: "Check this rig" }).click();

        await verdictIs(page, /^(Suitable|Limited|Unsuitable|Undetermined)$/);
        await page.getByRole("heading", { name: "Pass it on" }).waitFor();
        await sameAsData(page);
        const link = await share(page);
        await until(() => here(page), (seen) => seen === link, "the address is not the page's own link");
      }));
  }
}

test("how sure the verdict is stands on the page as it does in the data",
  withPage({}, async (page) => {
    await page.goto(`${address}/${sure}`);

    await sameAsData(page);
    const { confidence } = await dataFor(page.url());
    assert.match(await answer(page).innerText(), new RegExp(`Confidence ${confidence}`));
  }));
