import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { meant } from "../meant.ts";
import { rackSpan } from "../rack-span.ts";
import { works } from "../work.ts";

/** The pilot drill reaches through its guide to the tip of the longest screw in the rack. */
export const drillReachesTheLongestScrew: Rule = {
  id: "drill-reaches-the-longest-screw",
  severity: "stop",
  about: "chain",
  summary: "The drill's reach is at least the guide's length plus the longest screw in the rack.",
  why: "A drill that stops at its coupling leaves the far hole undrilled, and the longest screws jam.",
  fix: "Correct the drill's reach, the guide's length or the rack; one of them is usually a typing error.",
  source: "common practice",
  *check(input) {
    for (const work of works(input)) {
      if (!work.roles.includes("pilot-drill")) continue;
      const drill = meant(work, "pilot-drill");
      const through = (["insert", "sleeve", "guide"] as const).find((role) =>
        work.roles.includes(role),
      );
      const guide = through && meant(work, through);
      if (drill === undefined || guide === undefined) continue;
      const { longest } = rackSpan(work.screw);
      const needed = guide.length + longest;
      if (drill.reach >= needed) continue;
      yield {
        file: drill.file,
        path: ["reach"],
        message: `Expected a reach of ${mm(needed)} or more (${guide.name} ${mm(guide.length)} + ${work.screw.called} ${mm(longest)}), got ${mm(drill.reach)}`,
      };
    }
  },
  examples: [
    {
      title: "a drill with reach to spare",
      passes: true,
      shows: "Reach 112; sleeve 36 and longest screw 70 need 106.",
      edits: [],
    },
    {
      title: "a drill that just reaches",
      passes: true,
      shows: "Reach 106; sleeve 36 and longest screw 70 need 106.",
      edits: [{ file: "instrument/drill-27-pilot", path: ["reach"], value: 106 }],
    },
    {
      title: "a drill a thousandth short",
      passes: false,
      shows: "Reach 105.999; sleeve 36 and longest screw 70 need 106.",
      edits: [{ file: "instrument/drill-27-pilot", path: ["reach"], value: 105.999 }],
    },
    {
      title: "a drill far too short",
      passes: false,
      shows: "Reach 75; sleeve 36 and longest screw 70 need 106.",
      edits: [{ file: "instrument/drill-27-pilot", path: ["reach"], value: 75 }],
    },
  ],
};
