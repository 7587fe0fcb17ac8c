import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** A gauge is longer than the scale it carries. */
export const gaugeIsLongerThanItsScale: Rule = {
  id: "gauge-is-longer-than-its-scale",
  severity: "stop",
  about: "instrument",
  summary: "A depth gauge is longer than the range of its scale.",
  why: "A scale of 60 mm does not stand on a gauge of 20 mm: one of the two numbers is a slip.",
  fix: "Compare length and scale with the gauge itself.",
  source: "common practice",
  *check({ catalogue }) {
    for (const tool of catalogue.instruments.values()) {
      if (tool.kind !== "depth-gauge") continue;
      const range = tool.scale.to - tool.scale.from;
      if (tool.length <= range)
        yield {
          file: tool.file,
          path: ["length"],
          message: `Expected ${tool.name} to be longer than its scale of ${mm(range)}, got ${mm(tool.length)}`,
        };
    }
  },
  examples: [
    passes("longer", "Scale 10 to 70, length 60.001.", { "instrument/gauge-small length": 60.001 }),
    fails("as long as its scale", "Scale 10 to 70, length 60.", {
      "instrument/gauge-small length": 60,
    }),
  ],
};
