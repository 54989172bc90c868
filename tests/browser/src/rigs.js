import { refusal } from "./browser.js";
import { address } from "./service.js";

const crawler = {
  "motor.kind": "brushless",
  "motor.sensored": "true",
  "motor.kvRpmPerVolt": "3300",
  "motor.resistanceMilliohm": "22",
  "motor.massG": "160",
  "controller.motorKinds": "brushless",
  "controller.sensorInput": "true",
  "controller.maxCells": "3",
  "controller.continuousCurrentA": "40",
  "battery.seriesCells": "3",
  "battery.capacityMah": "2200",
  "vehicle.massKg": "3.63",
  "vehicle.tireDiameterMm": "118",
  "vehicle.drivetrain.pinionTeeth": "12",
  "vehicle.drivetrain.spurTeeth": "56",
  "vehicle.drivetrain.transmissionRatio": "2.8",
  "vehicle.drivetrain.axleRatio": "3.5",
  "course.climbSlopeDegrees": "45",
  "course.wantedMinutes": "30",
};

const query = (rig) => `?${new URLSearchParams(rig)}`;

/** Parameters of rigs whose verdict is plain from the best figures alone. */
export const sound = query({ ...crawler, spread: "none" });
export const burning = query({ ...crawler, "vehicle.massKg": "14", spread: "none" });
export const undetermined = query({ "vehicle.massKg": "3", spread: "none" });
export const mistaken = query({ ...crawler, "vehicle.massKg": "500", "motor.kvRpmPerVolt": "fast", spread: "none" });

/** Eight pounds: a pound is 0.45359237 kg, exact (NIST SP 811, 2008, B.8). */
export const eightPounds = query({ ...crawler, "vehicle.massKg": "3.62873896", spread: "none" });

/** The same sound rig, with how sure each limit is. */
export const sure = query(crawler);

/** Where a page is in each of its states, the words by which it is known, and what the browser says of it. */
export const states = [
  { name: "empty", at: `${address}/`, says: /^Not checked yet/ },
  { name: "sound", at: `${address}/${sure}`, says: /^Suitable/ },
  { name: "burning", at: `${address}/${burning}`, says: /^Unsuitable/ },
  { name: "mistake", at: `${address}/${mistaken}`, says: /^Not checked: /, troubles: [refusal(422)] },
  { name: "undetermined", at: `${address}/${undetermined}`, says: /^Undetermined/ },
  { name: "card", at: `${address}/embed${sound}`, says: /^Suitable/ },
  { name: "not-found", at: `${address}/nowhere`, says: /^Nothing is there/, troubles: [refusal(404)] },
];
