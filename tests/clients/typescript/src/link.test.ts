import assert from "node:assert/strict";
import { test } from "node:test";
import { crawler } from "./rig.js";
import { address, service, type Check } from "./service.js";

test("a rig in the address gets the answer that it gets in a body", async () => {
  const { id, motor, controller, battery, vehicle, course } = crawler;
  // A pound is 0.45359237 kg, exact (NIST SP 811, 2008, B.8).
  const body = { ...crawler, vehicle: { ...vehicle, massKg: 8 * 0.45359237 } };
  const posted = await service.POST("/v1/checks", { body });

  const { data, error } = await service.GET("/v1/checks", {
    params: {
      query: {
        id,
        "motor.kind": motor.kind,
        "motor.sensored": motor.sensored,
        "motor.kvRpmPerVolt": motor.kvRpmPerVolt,
        "motor.resistanceMilliohm": motor.resistanceMilliohm,
        "motor.massG": motor.massG,
        "controller.motorKinds": controller.motorKinds,
        "controller.sensorInput": controller.sensorInput,
        "controller.maxCells": controller.maxCells,
        "controller.continuousCurrentA": controller.continuousCurrentA,
        "battery.chemistry": battery.chemistry,
        "battery.seriesCells": battery.seriesCells,
        "battery.capacityMah": battery.capacityMah,
        "vehicle.massKg": "8 lb",
        "vehicle.tireDiameterMm": vehicle.tireDiameterMm,
        "vehicle.drivetrain.pinionTeeth": vehicle.drivetrain.pinionTeeth,
        "vehicle.drivetrain.spurTeeth": vehicle.drivetrain.spurTeeth,
        "vehicle.drivetrain.transmissionRatio": vehicle.drivetrain.transmissionRatio,
        "vehicle.drivetrain.axleRatio": vehicle.drivetrain.axleRatio,
        "course.climbSlopeDegrees": course.climbSlopeDegrees,
        "course.wantedMinutes": course.wantedMinutes,
      },
    },
  });

  assert.ok(posted.data);
  assert.ok(data, JSON.stringify(error));
  assert.deepEqual(data.loadCases, posted.data.loadCases);
  assert.equal(data.summary, posted.data.summary);
});

test("the link in an answer leads to the same answer", async () => {
  const { data } = await service.POST("/v1/checks", { body: crawler });
  assert.ok(data?.links);

  const followed = await fetch(new URL(data.links.self, address));

  assert.equal(followed.status, 200);
  const again = (await followed.json()) as Check;
  assert.deepEqual(again.loadCases, data.loadCases);
  assert.equal(again.summary, data.summary);
});
