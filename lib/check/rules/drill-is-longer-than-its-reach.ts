import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** A drill is longer than what of it goes in. */
export const drillIsLongerThanItsReach: Rule = {
  id: "drill-is-longer-than-its-reach",
  severity: "stop",
  about: "instrument",
  summary: "A drill's overall length is more than its reach: the coupling comes on top.",
  why: "Reach ends at the coupling or the stop. A drill as long as its reach has nothing to hold it by: one of the two numbers is a slip.",
  fix: "Compare length and reach with the drill itself.",
  source: "common practice",
  *check({ catalogue }) {
    for (const drill of catalogue.instruments.values())
      if (drill.kind === "drill" && drill.length <= drill.reach)
        yield {
          file: drill.file,
          path: ["length"],
          message: `Expected ${drill.name} to be longer than its reach of ${mm(drill.reach)}, got ${mm(drill.length)}`,
        };
  },
  examples: [
    passes("longer", "Reach 132, length 132.001.", { "instrument/drill-25 length": 132.001 }),
    fails("as long", "Reach 132, length 132.", { "instrument/drill-25 length": 132 }),
  ],
};
