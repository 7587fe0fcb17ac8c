import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

const procedure = "procedure/lower-fibula";

/** The work on a plate ends with a count, and its wires are ticked off. */
export const wiresAreCountedOut: Rule = {
  id: "wires-are-counted-out",
  severity: "stop",
  about: "technique",
  summary:
    "Among the procedures of a family of plates there is a count of instruments and pieces, and boxes for the wires taken out.",
  why: "A wire that was left in is found by the count, or on an image weeks later.",
  fix: "End the last procedure of the family with a step that counts, and give a step the tally wires.",
  source: "common practice",
  *check({ catalogue }) {
    const procedures = [...catalogue.procedures.values()];
    for (const family of new Set(procedures.flatMap(({ families }) => families))) {
      const own = procedures.filter(({ families }) => families.includes(family));
      const steps = own.flatMap((one) => one.steps);
      const missing = [
        ...(steps.some(({ verb }) => verb === "count") ? [] : ["a step that counts"]),
        ...(steps.some(({ tally }) => tally === "wires") ? [] : ["a tally of wires"]),
      ];
      const last = own.at(-1);
      if (last && missing.length > 0)
        yield {
          file: last.file,
          path: ["steps"],
          severity: keptOtherwise(catalogue, last),
          message: `Missing in the procedures of ${family}: ${missing.join(" and ")}`,
        };
    }
  },
  examples: [
    passes("counted", "Wires out with boxes, then the count."),
    fails("no count", "The procedure ends with the final pass.", {
      [`${procedure} steps.7.verb`]: "confirm",
    }),
    fails("no boxes for wires", "Wires are taken out and nothing is ticked.", {
      [`${procedure} steps.4.tally`]: undefined,
    }),
  ],
};
