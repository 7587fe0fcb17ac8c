import type { Danger, Verb } from "../model/recipe.ts";

/** The acts at which each danger arises: where a caution against it belongs. Against what has none, the whole card warns. */
export const actsOf: Readonly<Record<Danger, readonly Verb[]>> = {
  "power-finish": ["tighten-to-limit", "drive-screw"],
  "tilted-sleeve": ["turn-in-sleeve"],
  "gauge-in-sleeve": ["take-out", "measure"],
  "locking-first": ["confirm", "tighten-to-limit", "drive-screw"],
  "wrong-mark": ["confirm", "aim-guide", "drill-pilot", "drill-gliding", "tap", "drive-screw"],
  "worn-drill": ["drill-pilot", "drill-gliding"],
  "wrong-side": ["confirm", "hold"],
  "unseated-hooks": ["seat-hooks"],
  "gliding-through": ["drill-gliding"],
  "bent-thread": ["hold"],
  "misheard-length": ["measure", "read-marks"],
  "missed-screw": ["final-pass"],
  "lost-piece": ["count", "take-out-wires"],
  "used-again": ["count"],
  "unsterile-card": [],
  "mixed-makers": ["confirm"],
};

/** What each act can go wrong by, whatever the technique. */
export const dangersOf: Partial<Readonly<Record<Verb, readonly Danger[]>>> = {
  "turn-in-sleeve": ["tilted-sleeve"],
  "drill-gliding": ["gliding-through"],
  "drill-pilot": ["worn-drill"],
  measure: ["misheard-length"],
  "read-marks": ["misheard-length"],
  "tighten-to-limit": ["locking-first"],
  "seat-hooks": ["unseated-hooks"],
  "final-pass": ["missed-screw"],
};
