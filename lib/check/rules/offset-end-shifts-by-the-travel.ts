import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { meant } from "../meant.ts";
import { works } from "../work.ts";

const loaded = "guide-25's offset end";

/** A guide's offset end stands off by as much as the hole lets the plate travel. */
export const offsetEndShiftsByTheTravel: Rule = {
  id: "offset-end-shifts-by-the-travel",
  severity: "sign",
  about: "chain",
  summary:
    "The offset end of the guide for a loaded screw stands off the middle by the travel of the hole it is used in.",
  why: "Drilled too far off, the screw's head stops on the rim before it has drawn the plate; not far enough, and the gap stays open.",
  fix: "Compare the offset of the guide's end and the travel of the hole with the drawings.",
  source: "common practice",
  *check(input) {
    for (const work of works(input)) {
      const { zone, recipe } = work;
      if (!recipe.needs.includes("travel") || zone.kind !== "plain-oblong") continue;
      const guide = meant(work, "guide");
      const index = guide?.ends.findIndex(({ name }) => name === "offset") ?? -1;
      const offset = guide?.ends[index]?.offset;
      if (guide === undefined || offset === undefined || offset === zone.travel) continue;
      yield {
        file: guide.file,
        path: ["ends", index, "offset"],
        message: `Expected an offset of ${mm(zone.travel)}, the travel of ${zone.name}, for ${guide.name}, got ${mm(offset)}`,
      };
    }
  },
  examples: [
    passes("offset and travel", `Travel 1.0; ${loaded} stands off by 1.0.`),
    fails("a thousandth more", `Travel 1.0; ${loaded} stands off by 1.001.`, {
      "instrument/guide-25 ends.1.offset": 1.001,
    }),
    fails("a tenth of the travel", `Travel 0.1; ${loaded} stands off by 1.0.`, {
      "zone/oblong-35 travel": 0.1,
    }),
  ],
};
