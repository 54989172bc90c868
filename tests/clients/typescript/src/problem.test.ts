import assert from "node:assert/strict";
import { test } from "node:test";
import { crawler } from "./rig.js";
import { service, type Rig } from "./service.js";

test("a figure out of range is a problem that names its member", async () => {
  const tooHeavy: Rig = { ...crawler, vehicle: { ...crawler.vehicle, massKg: 500 } };

  const { data, error, response } = await service.POST("/v1/checks", { body: tooHeavy });

  assert.equal(data, undefined);
  assert.ok(error);
  assert.equal(response.status, 422);
  assert.equal(error.status, 422);
  assert.equal(error.errors?.length, 1);
  assert.equal(error.errors[0]?.path, "vehicle.massKg");
  assert.equal(error.errors[0].code, "out-of-range");
  assert.equal(error.errors[0].maximum, 50);
});

test("a misspelt member is seen by the compiler, and by the service", async () => {
  const { error } = await service.POST("/v1/checks", {
    // @ts-expect-error: it is kvRpmPerVolt.
    body: { ...crawler, motor: { kind: "brushless", kvRpmPerVlot: 3300 } },
  });

  assert.equal(error?.errors?.[0]?.path, "motor.kvRpmPerVlot");
  assert.equal(error.errors[0].code, "unknown-member");
  assert.equal(error.errors[0].nearest, "kvRpmPerVolt");
});
