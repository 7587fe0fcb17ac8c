import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { meant } from "../meant.ts";
import { rackSpan } from "../rack-span.ts";
import { works } from "../work.ts";

/** The depth gauge spans the rack, and its hook enters the drilled hole. */
export const gaugeReadsTheWholeRack: Rule = {
  id: "gauge-reads-the-whole-rack",
  severity: "stop",
  about: "chain",
  summary:
    "The gauge's scale covers the shortest to the longest screw of the rack, and its hook is narrower than the pilot hole.",
  why: "A gauge that ends at 60 cannot choose a screw 70; a hook wider than the hole cannot catch the far side.",
  fix: "Correct the gauge's scale or hook, or the rack.",
  source: "common practice",
  *check(input) {
    for (const work of works(input)) {
      if (!work.roles.includes("gauge")) continue;
      const gauge = meant(work, "gauge");
      if (gauge === undefined) continue;
      const { scale, hook, file } = gauge;
      const { called, pilot } = work.screw;
      const { shortest, longest } = rackSpan(work.screw);
      if (scale.from > shortest)
        yield {
          file,
          path: ["scale", "from"],
          message: `Expected a scale from ${mm(shortest)} or less for ${called}, got ${mm(scale.from)}`,
        };
      if (scale.to < longest)
        yield {
          file,
          path: ["scale", "to"],
          message: `Expected a scale to ${mm(longest)} or more for ${called}, got ${mm(scale.to)}`,
        };
      if (hook >= pilot)
        yield {
          file,
          path: ["hook"],
          message: `Expected a hook narrower than the pilot hole ${mm(pilot)} of ${called}, got ${mm(hook)}`,
        };
    }
  },
  examples: [
    {
      title: "a scale that ends with the rack",
      passes: true,
      shows: "Gauge 10 to 70; rack 10 to 70; hook 1.7 in a hole of 2.0.",
      edits: [],
    },
    {
      title: "a scale that ends before the rack",
      passes: false,
      shows: "Gauge 10 to 60; the rack goes to 70.",
      edits: [{ file: "instrument/gauge-small", path: ["scale", "to"], value: 60 }],
    },
    {
      title: "a scale that begins after the rack",
      passes: false,
      shows: "Gauge 12 to 70; the rack begins at 10.",
      edits: [{ file: "instrument/gauge-small", path: ["scale", "from"], value: 12 }],
    },
    {
      title: "a hook a thousandth narrower than the hole",
      passes: true,
      shows: "Hook 1.999 enters a pilot hole of 2.0.",
      edits: [{ file: "instrument/gauge-small", path: ["hook"], value: 1.999 }],
    },
    {
      title: "a hook as wide as the hole",
      passes: false,
      shows: "Hook 2.0 does not enter a pilot hole of 2.0.",
      edits: [{ file: "instrument/gauge-small", path: ["hook"], value: 2.0 }],
    },
  ],
};
