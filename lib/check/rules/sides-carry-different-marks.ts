import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** The left and the right of a plate are told apart by what is etched on them. */
export const sidesCarryDifferentMarks: Rule = {
  id: "sides-carry-different-marks",
  severity: "stop",
  about: "plate",
  summary: "A plate and its mirror image do not carry the same mark.",
  why: "Turned over, left and right look the same; the mark is all that tells them apart.",
  fix: "Write each side's mark as it is etched on the metal.",
  source: "Alanazi et al., Surg J 2018 (10.1055/s-0038-1673340), wrong-side components",
  *check({ catalogue: { plates } }) {
    for (const plate of plates.values()) {
      const other = "mirror_of" in plate ? plates.get(plate.mirror_of) : undefined;
      if (other?.mark === plate.mark)
        yield {
          file: plate.file,
          path: ["mark"],
          message: `Expected another mark than the ${other.side} plate's, got "${plate.mark}" on both`,
        };
    }
  },
  examples: [
    passes("two marks", "Left LF L, right LF R."),
    fails("one mark", "Left and right both LF L.", { "plate/lower-fibula-right mark": "LF L" }),
  ],
};
