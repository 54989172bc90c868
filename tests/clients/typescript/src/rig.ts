import type { Rig } from "./service.js";

/** A crawler of 3.63 kg that climbs 45 degrees on three cells. */
export const crawler = {
  id: "crawler",
  motor: { kind: "brushless", sensored: true, kvRpmPerVolt: 3300, resistanceMilliohm: 22, massG: 160 },
  controller: { motorKinds: ["brushless"], sensorInput: true, maxCells: 3, continuousCurrentA: 40 },
  battery: { chemistry: "lipo", seriesCells: 3, capacityMah: 2200 },
  vehicle: {
    massKg: 3.63,
    tireDiameterMm: 118,
    drivetrain: { pinionTeeth: 12, spurTeeth: 56, transmissionRatio: 2.8, axleRatio: 3.5 },
  },
  course: { climbSlopeDegrees: 45, wantedMinutes: 30 },
} as const satisfies Rig;
