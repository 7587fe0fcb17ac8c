import { mm, type Um } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** Nearer than this to the middle line a hole is meant to lie on it, micrometres. */
const near: Um = 500;
const at = (y: number) => ({ "plate/lower-fibula-left holes.1.at": [9, y] });

/** A hole lies on the middle line of its plate or clear of it. */
export const holeIsClearOfTheMiddleLine: Rule = {
  id: "hole-is-clear-of-the-middle-line",
  severity: "sign",
  about: "plate",
  summary:
    "A hole that is placed by itself lies on the plate's middle line, or at least 0.5 mm off it.",
  why: "Nobody sets a hole a quarter of a millimetre off the middle; that is 2.5 with its point in the wrong place.",
  fix: "Compare the position with the drawing; sign where the drawing has it so.",
  source: "common practice",
  *check({ catalogue }) {
    for (const plate of catalogue.plates.values()) {
      if (!("holes" in plate)) continue;
      for (const [index, { label, at: place }] of plate.holes.entries()) {
        const off = Math.abs(place[1]);
        if (off > 0 && off < near)
          yield {
            file: plate.file,
            path: ["holes", index, "at", 1],
            message: `Expected hole ${label} of ${plate.name} on the middle line or ${mm(near)} off it, got ${mm(off)}`,
          };
      }
    }
  },
  examples: [
    passes("on the line", "Hole H2 at 0.", at(0)),
    passes("just clear of it", "Hole H2 at 0.5.", at(0.5)),
    fails("neither", "Hole H2 at 0.499.", at(0.499)),
    fails("neither, on the other side", "Hole H2 at −0.25.", at(-0.25)),
  ],
};
