import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { meant } from "../meant.ts";
import { works } from "../work.ts";

/** A gliding drill comes out of its guide. */
export const glidingDrillLeavesItsGuide: Rule = {
  id: "gliding-drill-leaves-its-guide",
  severity: "stop",
  about: "chain",
  summary: "The reach of a gliding drill is more than the length of its guide.",
  why: "A drill that ends inside its guide does not touch the bone: reach or length is a slip.",
  fix: "Compare the drill's reach and the guide's length with the parts.",
  source: "common practice",
  *check(input) {
    for (const work of works(input)) {
      if (!work.roles.includes("gliding-drill")) continue;
      const [drill, guide] = [meant(work, "gliding-drill"), meant(work, "gliding-guide")];
      if (drill === undefined || guide === undefined || drill.reach > guide.length) continue;
      yield {
        file: drill.file,
        path: ["reach"],
        message: `Expected ${drill.name} to reach further than ${guide.name} is long, ${mm(guide.length)}, got ${mm(drill.reach)}`,
      };
    }
  },
  examples: [
    passes("out of its guide", "Reach 40.001, guide 40.", { "instrument/drill-35 reach": 40.001 }),
    fails("inside its guide", "Reach 40, guide 40.", { "instrument/drill-35 reach": 40 }),
  ],
};
