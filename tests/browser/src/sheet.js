import assert from "node:assert/strict";
import { until } from "./browser.js";

/** What a builder fills in who knows little more than the boxes: group, label, what is typed or chosen. */
export const entries = [
  ["Rig and gearing", "Mass, ready to run", "3.63"],
  ["Rig and gearing", "Tire diameter", "118"],
  ["Rig and gearing", "Pinion", "12"],
  ["Rig and gearing", "Spur", "56"],
  ["Rig and gearing", "Transmission ratio", "2.8"],
  ["Rig and gearing", "Axle ratio", "3.5"],
  ["Motor", "Kind of motor", { label: "brushless" }],
  ["Motor", "Has it a sensor cable?", { label: "yes" }],
  ["Motor", "Kv", "3300"],
  ["Motor", "Mass of the motor", "160"],
  ["Speed controller", "Most lithium cells", "3"],
  ["Speed controller", "Lasting current printed", "40"],
  ["Pack", "Cells in series", "3"],
  ["Pack", "Capacity", "2200"],
  ["Course", "Steepest slope to climb", "45"],
];

/** A numbered group of fields. */
export const group = (page, name) => page.getByRole("group", { name: new RegExp(`^\\d+ ${name}$`) });

/** A field by its label, whatever stands behind the label. */
export const field = (page, groupName, label) =>
  group(page, groupName).getByLabel(new RegExp(`^${label.replaceAll(/[?.]/g, "\\$&")}( ?needed)?$`));

/** The one figure that must be there. */
export const mass = (page) => field(page, "Rig and gearing", "Mass, ready to run");

export const fill = async (page, [groupName, label, value]) => {
  const where = field(page, groupName, label);
  if (typeof value === "string") await where.fill(value);
  else await where.selectOption(value);
};

/** The part of the page that answers; it is named by its heading. */
export const answer = (page) => page.locator("section", { has: page.getByRole("heading", { level: 2 }) });

/** The words of the heading over the answer. */
export const verdict = async (page) =>
  (await answer(page).getByRole("heading", { level: 2 }).innerText()).trim().replaceAll(/\s+/g, " ");

/** Waits for the verdict. */
export const verdictIs = (page, wanted) => until(() => verdict(page), (seen) => wanted.test(seen), `no ${wanted}`);

/** The link that the page hands out. */
export const share = (page) => page.getByLabel("Link to this answer").inputValue();

/** The address without its anchor. */
export const here = (page) => page.url().split("#")[0];

/** The key figures by their names, in the units shown. */
export const keyFigures = async (page) => {
  const names = await answer(page).getByRole("term").allInnerTexts();
  const figures = await answer(page).getByRole("definition").allInnerTexts();
  assert.ok(names.length > 0 && names.length === figures.length, `${names.length} names, ${figures.length} figures`);
  return Object.fromEntries(names.map((name, at) => [name, figures[at]]));
};

/** Name and value of everything in the form. */
export const values = (page) =>
  page.locator("form").evaluate((form) => [...new FormData(form)].filter(([, value]) => value !== ""));

/** What a screen reader adds to a field. */
export const description = (where) =>
  where.evaluate((field) =>
    (field.getAttribute("aria-describedby") ?? "")
      .split(" ")
      .map((id) => document.getElementById(id)?.innerText ?? "")
      .join(" "),
  );

/** The unit that stands behind a field. */
export const unitOf = (where) => where.evaluate((field) => field.parentElement.innerText.trim());

/** Opens everything that is folded. */
export const unfold = (page) =>
  page.evaluate(() => {
    for (const one of document.querySelectorAll("details")) one.open = true;
  });

/** Has pictures that are fetched where they are looked at fetched now. */
export const fetchPictures = async (page) => {
  await page.evaluate(() => {
    for (const one of document.images) one.loading = "eager";
  });
  await until(
    () => page.evaluate(() => [...document.images].filter((one) => !one.complete || one.naturalWidth === 0).length),
    (missing) => missing === 0,
    "pictures are missing",
  );
};
