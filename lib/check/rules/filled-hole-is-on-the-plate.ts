import { known } from "../../model/catalogue.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { fillings, platesOf } from "../procedure-fills.ts";

const step = "procedure/lower-fibula steps";

/** A step of a procedure fills holes that every family of the procedure has in that region. */
export const filledHoleIsOnThePlate: Rule = {
  id: "filled-hole-is-on-the-plate",
  severity: "stop",
  about: "technique",
  summary:
    "A step that fills holes names a part of a hole and a region in which each plate family of the procedure has one.",
  why: "The step would hand over drill, guide and screw for a hole that the plate on the table does not have there.",
  fix: "Correct zone or region of the step, or the families the procedure is for.",
  source: "common practice",
  needsAll: ["opening", "plate", "zone"],
  *check({ catalogue, derived }) {
    for (const { procedure, index, fills } of fillings(catalogue))
      for (const family of procedure.families) {
        const holes = platesOf(catalogue, derived, [family]).flatMap((plate) => plate.holes);
        const there = holes.some(
          ({ region, zones }) =>
            region === fills.region && zones.some(({ zone }) => zone === fills.zone),
        );
        if (!there)
          yield {
            file: procedure.file,
            path: ["steps", index, "fills", "zone"],
            message: `Expected a hole with ${known(catalogue.zones, fills.zone).name} in the ${fills.region} of ${family}, got none`,
          };
      }
  },
  examples: [
    passes("a hole that is there", "Oblong 3.5 in the shaft: the row of combined openings."),
    fails("a hole of the other region", "Oblong 3.5 in the head, where all holes are 2.7.", {
      [`${step}.1.fills.region`]: "head",
    }),
    fails("a hole the plate has not", "Threaded 2.7 in the shaft, where all holes are 3.5.", {
      [`${step}.2.fills.zone`]: "threaded-27",
    }),
  ],
};
