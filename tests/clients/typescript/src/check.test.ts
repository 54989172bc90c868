import assert from "node:assert/strict";
import { test } from "node:test";
import { crawler } from "./rig.js";
import { service } from "./service.js";

test("a check answers with a verdict and with figures of its load cases", async () => {
  const { data, error } = await service.POST("/v1/checks", { body: crawler });

  assert.ok(data, JSON.stringify(error));
  // What stands in every answer needs no question mark, and the words of a verdict are known to the compiler.
  const verdict: "suitable" | "limited" | "undetermined" | "unsuitable" = data.verdict;
  assert.equal(verdict, "suitable");
  assert.equal(data.id, "crawler");
  // A figure may be missing, and the compiler insists on it.
  const { motorCurrentA, batteryCurrentA } = data.loadCases.climb;
  assert.ok(motorCurrentA !== undefined && motorCurrentA > 10 && motorCurrentA < 30, `${motorCurrentA} A`);
  assert.ok(batteryCurrentA !== undefined && batteryCurrentA < motorCurrentA, `${batteryCurrentA} A`);
  assert.equal(data.findings.filter((finding) => finding.decides).length, 1);
});
