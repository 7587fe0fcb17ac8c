import type { Rule } from "../../model/rule.ts";
import { gapsTold } from "../chain-gaps.ts";

/** Every instrument a screw's chain asks for is answered by exactly one of the system. */
export const chainHasOneCandidate: Rule = {
  id: "chain-has-one-candidate",
  severity: "stop",
  about: "chain",
  summary:
    "For each screw in each hole by each technique, exactly one instrument of the system fits each place in the chain.",
  why: "With none, the card would have a blank where the nurse looks. With two, the choice would be left to whoever is tired.",
  fix: "Correct the numbers of the parts named, add the missing instrument, or take the screw out of the hole's permits.",
  source: "common practice",
  check: gapsTold,
  examples: [
    {
      title: "one instrument in each place",
      passes: true,
      shows: "Locking 3.5 in threaded part 3.5: sleeve 3.5, drill 2.7, driver 20, limiter 1.6 N·m.",
      edits: [],
    },
    {
      title: "no sleeve with the hole's thread and bore",
      passes: false,
      shows: "Sleeve 3.5 with bore 3.3: no sleeve guides drill 2.7.",
      edits: [{ file: "instrument/sleeve-35", path: ["bore"], value: 3.3 }],
    },
    {
      title: "two drills of one diameter",
      passes: false,
      shows:
        "The gliding drill 2.7 is called a pilot drill and reaches as far: two drills 2.7 fit locking 3.5.",
      edits: [
        { file: "instrument/drill-27-gliding", path: ["use"], value: "pilot" },
        { file: "instrument/drill-27-gliding", path: ["reach"], value: 112 },
      ],
    },
  ],
};
