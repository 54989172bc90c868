import assert from "node:assert/strict";
import { test } from "node:test";
import { withPage } from "./browser.js";
import { states, sure } from "./rigs.js";
import { address } from "./service.js";
import { answer, unfold } from "./sheet.js";

// What sticks out to the right, unless it is within something that scrolls by itself; nothing when the page does not scroll.
const sticksOut = () => {
  const room = document.documentElement.clientWidth;
  if (document.documentElement.scrollWidth <= room) return [];
  const scrolls = (one) => one && (getComputedStyle(one).overflowX !== "visible" || scrolls(one.parentElement));
  const right = (one) => {
    const words = document.createRange();
    const ends = [...one.childNodes]
      .filter((node) => node.nodeType === Node.TEXT_NODE)
      .map((text) => (words.selectNodeContents(text), words.getBoundingClientRect().right));
    return Math.max(one.getBoundingClientRect().right, ...ends);
  };
  const out = [...document.body.querySelectorAll("*")]
    .filter((one) => one.checkVisibility() && right(one) > room + 1 && !scrolls(one))
    .map((one) => `${one.localName} ${one.className} "${(one.id || one.textContent).trim().slice(0, 30)}"`);
  return out.length > 0 ? out : ["something that is not seen"];
};

// Lines of text that lie over one another, but for what sticks to an edge, and what a picture draws.
const overlaps = () => {
  const isFree = (element) => {
    if (!element.checkVisibility()) return false;
    for (let one = element; one; one = one.parentElement) {
      if (["sticky", "fixed", "absolute"].includes(getComputedStyle(one).position) || one.tagName === "svg") return false;
    }
    return true;
  };
  const lines = [];
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (texts.nextNode()) {
    const text = texts.currentNode;
    if (text.data.trim() === "" || text.parentElement.closest("select") || !isFree(text.parentElement)) continue;
    const range = document.createRange();
    range.selectNodeContents(text);
    for (const box of range.getClientRects()) {
      // The middle of a line: tall letters may touch the next.
      const { left, right, top, bottom, height } = box;
      if (right > left) lines.push({ text, left, right, top: top + height * 0.3, bottom: bottom - height * 0.3 });
    }
  }
  lines.sort((one, other) => one.top - other.top);
  const found = [];
  lines.forEach((one, at) => {
    for (let next = at + 1; next < lines.length && lines[next].top < one.bottom; next++) {
      const other = lines[next];
      if (other.text !== one.text && one.left < other.right - 2 && other.left < one.right - 2) {
        found.push(`"${one.text.data.trim().slice(0, 40)}" and "${other.text.data.trim().slice(0, 40)}"`);
      }
    }
  });
  return { found, lines: lines.length };
};

const fits = async (page, what) => {
  assert.deepEqual(await page.evaluate(sticksOut), [], `${what}: wider than the window`);
  const { found, lines } = await page.evaluate(overlaps);
  assert.ok(lines > 3, `${what}: ${lines} lines`);
  assert.deepEqual(found, [], what);
};

for (const { name, at, troubles } of states) {
  test(`nothing sticks out or overlaps on a narrow screen and with large letters in the state "${name}"`,
    withPage({ width: 320, expects: troubles }, async (page) => {
      await page.goto(at);
      await fits(page, "folded, 320 px");
      await unfold(page);
      await fits(page, "unfolded, 320 px");

      await page.evaluate(() => (document.documentElement.style.fontSize = "200%"));
      for (const width of [390, 1280]) {
        await page.setViewportSize({ width, height: 900 });
        await fits(page, `unfolded, letters doubled, ${width} px`);
      }
    }));
}

test("nothing moves by itself for those who do not want it",
  withPage({ motion: "reduce" }, async (page) => {
    await page.goto(`${address}/${sure}`);
    const moving = await page.evaluate(() => ({
      queries: matchMedia("(prefers-reduced-motion: reduce)").matches,
      running: document.getAnimations().length,
      styled: [...document.querySelectorAll("*")]
        .filter((one) => {
          const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(one);
          return transitionDuration !== "0s" || animationName !== "none" || scrollBehavior !== "auto";
        })
        .map((one) => one.tagName),
    }));
    assert.deepEqual(moving, { queries: true, running: 0, styled: [] });
  }));

test("paper shows the answer, with what is folded, and not the form",
  withPage({}, async (page) => {
    await page.goto(`${address}/${sure}`);
    const inside = answer(page).getByText("These cautions defer to:");
    assert.ok(await inside.isHidden());
    await page.emulateMedia({ media: "print" });

    assert.ok(await page.locator("form").isHidden());
    assert.ok(await page.getByRole("button", { name: "Check this rig" }).isHidden());
    assert.ok(await answer(page).getByRole("heading", { level: 2, name: "Suitable" }).isVisible());
    await inside.waitFor({ state: "visible" });
  }));
