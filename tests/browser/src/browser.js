import assert from "node:assert/strict";
import { after } from "node:test";
import { chromium } from "playwright-core";
import { address } from "./service.js";

/** What the browser says of an answer that is a problem, which a page shows all the same. */
export const refusal = (status) =>
  new RegExp(`^console error: Failed to load resource: the server responded with a status of ${status} `);

// What the browser gives up itself: a question that a newer one replaces, a picture of a page that is left.
const givenUp = "net::ERR_ABORTED";

// Nothing of the browser itself goes out; the tests refuse whatever a page asks of another host.
const quiet = ["quic", "background-networking", "component-update", "sync", "gpu"].map((what) => `--disable-${what}`);

let running;

const browser = () =>
  (running ??= chromium.launch({
    executablePath: process.env.POWERCHECK_CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--no-first-run", ...quiet],
  }));

after(async () => (await running?.catch(() => null))?.close());

/**
 * A test body with a page of its own, in a browser context of its own.
 * It fails on every warning, error, failed request and request to another origin that is not named.
 * @param {object} how
 * @param {number} [how.width] of the window, px
 * @param {number} [how.height] of the window, px
 * @param {boolean} [how.script] whether scripts run
 * @param {RegExp[]} [how.expects] troubles that must come
 * @param {RegExp[]} [how.allows] troubles that may come
 * @param {string[]} [how.origins] beside that of the service
 * @param {(page: import("playwright-core").Page) => Promise<void>} body
 */
export const withPage = (how, body) => async () => {
  const context = await (await browser()).newContext({
    viewport: { width: how.width ?? 1280, height: how.height ?? 900 },
    javaScriptEnabled: how.script ?? true,
    colorScheme: how.color ?? "light",
    reducedMotion: how.motion ?? "no-preference",
  });
  context.setDefaultTimeout(20_000);
  try {
    const page = await context.newPage();
    const troubles = watch(page, [address, ...(how.origins ?? [])]);
    await body(page);
    hold(troubles, how.expects ?? [], how.allows ?? []);
  } finally {
    await context.close();
  }
};

const watch = (page, origins) => {
  const troubles = [];
  page.on("console", (said) => {
    if (["error", "warning"].includes(said.type())) troubles.push(`console ${said.type()}: ${said.text()}`);
  });
  page.on("pageerror", (error) => troubles.push(`page error: ${error.message}`));
  page.on("requestfailed", (request) => {
    const why = request.failure()?.errorText;
    if (why !== givenUp) troubles.push(`request failed: ${request.url()} ${why}`);
  });
  page.on("request", (request) => {
    const { protocol, origin } = new URL(request.url());
    if (protocol !== "data:" && !origins.includes(origin)) troubles.push(`request to another host: ${request.url()}`);
  });
  return troubles;
};

const hold = (troubles, expects, allows) => {
  const unexpected = troubles.filter((trouble) => ![...expects, ...allows].some((known) => known.test(trouble)));
  assert.deepEqual(unexpected, []);
  for (const expected of expects) {
    assert.ok(troubles.some((trouble) => expected.test(trouble)), `${expected} did not come`);
  }
};

/** Waits until something is so, and fails with what it last was. */
export const until = async (read, holds, what) => {
  const end = Date.now() + 20_000;
  for (;;) {
    const seen = await read();
    if (holds(seen)) return seen;
    assert.ok(Date.now() < end, `${what}; it stayed ${JSON.stringify(seen)}`);
    await new Promise((done) => setTimeout(done, 50));
  }
};
