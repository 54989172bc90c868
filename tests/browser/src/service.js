import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { createServer } from "node:http";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";

const run = promisify(execFile);

/** Where the service is that the tests ask. */
export const address = process.env.POWERCHECK_ADDRESS;
assert.ok(address, "POWERCHECK_ADDRESS must hold the address of the service");

/** The answer as data to what a page's address says. */
export const dataFor = async (pageAddress) => {
  const { origin, search } = new URL(pageAddress);
  const answer = await fetch(`${origin}/v1/checks${search}`, { headers: { Accept: "application/json" } });
  assert.equal(answer.status, 200, pageAddress);
  return answer.json();
};

/** Starts another service with settings of its own. */
export const startService = async (settings) => {
  const folder = await mkdtemp(join(tmpdir(), "powercheck-"));
  const serve = process.env.POWERCHECK_SERVE;
  assert.ok(serve, "POWERCHECK_SERVE must hold the path of tests/serve");
  const { stdout } = await run(serve, ["start", folder], { env: { ...process.env, ...settings } });
  return {
    address: stdout.trim(),
    stop: async () => {
      await run(serve, ["stop", folder]);
      await rm(folder, { recursive: true });
    },
  };
};

/** Starts a server of another origin whose pages are made by a function of their path. */
export const startSite = async (pageOf) => {
  const server = createServer((request, answer) => {
    answer.setHeader("Content-Type", "text/html; charset=utf-8");
    answer.end(`<!DOCTYPE html><title>A shop</title><link rel="icon" href="data:,">${pageOf(request.url)}`);
  });
  await new Promise((ready) => server.listen(0, "127.0.0.1", ready));
  server.unref();
  return { address: `http://127.0.0.1:${server.address().port}`, stop: () => server.close() };
};
