import { wholeMm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** The runs of a rack are listed as the screws lie in it: from the shortest to the longest. */
export const runsOfLengthsRise: Rule = {
  id: "runs-of-lengths-rise",
  severity: "stop",
  about: "screw",
  summary:
    "A run of a screw's lengths does not end below its beginning, and begins above the end of the run before it.",
  why: "Lengths out of order are two lines that changed places, or digits that did: a length would be missing or stand twice, and the drawn example would be another screw.",
  fix: "List the runs from the shortest screw to the longest, each length in one of them.",
  source: "common practice",
  *check({ catalogue }) {
    for (const { file, called, lengths } of catalogue.screws.values())
      for (const [index, { from, to }] of lengths.entries()) {
        const before = lengths[index - 1]?.to;
        if (to < from)
          yield {
            file,
            path: ["lengths", index, "to"],
            message: `Expected the run from ${wholeMm(from)} of ${called} to end at ${wholeMm(from)} or above, got ${wholeMm(to)}`,
          };
        if (before !== undefined && from <= before)
          yield {
            file,
            path: ["lengths", index, "from"],
            message: `Expected the run of ${called} to begin above ${wholeMm(before)}, where the one before it ends, got ${wholeMm(from)}`,
          };
      }
  },
  examples: [
    passes("two runs", "10 to 50, then 55 to 70.", {
      "screw/locking-35 lengths": [
        { from: 10, to: 50, step: 2 },
        { from: 55, to: 70, step: 5 },
      ],
    }),
    passes("a run of one length", "10 to 10.", {
      "screw/locking-35 lengths": [{ from: 10, to: 10, step: 2 }],
    }),
    fails("the longer run first", "55 to 70, then 10 to 50.", {
      "screw/locking-35 lengths": [
        { from: 55, to: 70, step: 5 },
        { from: 10, to: 50, step: 2 },
      ],
    }),
    fails("a length in two runs", "10 to 50, then 50 to 70: 50 stands twice.", {
      "screw/locking-35 lengths": [
        { from: 10, to: 50, step: 2 },
        { from: 50, to: 70, step: 5 },
      ],
    }),
    fails("a run that ends below its beginning", "50 to 10.", {
      "screw/locking-35 lengths": [{ from: 50, to: 10, step: 2 }],
    }),
  ],
};
