import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { meant } from "../meant.ts";
import { works } from "../work.ts";

const guiding = ["gliding-guide", "insert", "guide", "sleeve"] as const;

/** Sleeve, guide and insert hold the drill with a small clearance, micrometres 50 to 200 inclusive. */
export const sleeveGuidesTheDrill: Rule = {
  id: "sleeve-guides-the-drill",
  severity: "stop",
  about: "chain",
  summary: "The bore of a sleeve, guide or insert is 0.05 to 0.20 mm wider than its drill.",
  why: "A loose drill wanders off the axis the screw head needs; a tight one seizes and heats.",
  fix: "Correct the bore or the drill's diameter.",
  source: "common practice",
  needsAll: ["instrument"],
  *check(input) {
    for (const work of works(input)) {
      for (const role of guiding.filter((one) => work.roles.includes(one))) {
        const tool = meant(work, role);
        const drill = role === "gliding-guide" ? work.screw.gliding : work.screw.pilot;
        if (tool === undefined || drill === undefined) continue;
        const clearance = tool.bore - drill;
        if (clearance >= 50 && clearance <= 200) continue;
        yield {
          file: tool.file,
          path: ["bore"],
          message: `Expected 0.05 to 0.20 mm clearance, got ${mm(clearance)} (bore ${mm(tool.bore)}, drill ${mm(drill)} for ${work.screw.called})`,
        };
      }
    }
  },
  examples: [
    {
      title: "a tenth of a millimetre",
      passes: true,
      shows: "Sleeve bore 2.8, drill 2.7: clearance 0.1.",
      edits: [],
    },
    {
      title: "a rattling drill",
      passes: false,
      shows: "Sleeve bore 3.3, drill 2.7: clearance 0.6.",
      edits: [{ file: "instrument/sleeve-35", path: ["bore"], value: 3.3 }],
    },
    {
      title: "the smallest clearance",
      passes: true,
      shows: "Sleeve bore 2.75, drill 2.7: clearance 0.05.",
      edits: [{ file: "instrument/sleeve-35", path: ["bore"], value: 2.75 }],
    },
    {
      title: "a thousandth under the smallest clearance",
      passes: false,
      shows: "Sleeve bore 2.749, drill 2.7: clearance 0.049 binds.",
      edits: [{ file: "instrument/sleeve-35", path: ["bore"], value: 2.749 }],
    },
    {
      title: "the largest clearance",
      passes: true,
      shows: "Sleeve bore 2.9, drill 2.7: clearance 0.2.",
      edits: [{ file: "instrument/sleeve-35", path: ["bore"], value: 2.9 }],
    },
    {
      title: "a thousandth over the largest clearance",
      passes: false,
      shows: "Sleeve bore 2.901, drill 2.7: clearance 0.201 rattles.",
      edits: [{ file: "instrument/sleeve-35", path: ["bore"], value: 2.901 }],
    },
  ],
};
