import type { Verb } from "../model/recipe.ts";

/** Each verb as the heading of its step. */
export const verbWords: Readonly<Record<Verb, string>> = {
  confirm: "Confirm",
  hold: "Hold the plate",
  "seat-hooks": "Seat the hooks",
  "aim-guide": "Aim the guide",
  "turn-in-sleeve": "Turn in the sleeve",
  "drill-pilot": "Drill the pilot hole",
  "drill-gliding": "Drill the gliding hole",
  "place-insert": "Place the insert",
  "take-out": "Take out",
  measure: "Measure",
  "read-marks": "Read the marks",
  tap: "Tap",
  countersink: "Countersink",
  "drive-screw": "Drive the screw",
  "watch-gap": "Watch the gap",
  "tighten-by-hand": "Tighten by hand",
  "tighten-to-limit": "Tighten to the limit",
  "take-out-wires": "Take out the wires",
  "final-pass": "Tighten all again",
  count: "Count",
};
