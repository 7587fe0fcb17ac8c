import { known } from "../../model/catalogue.ts";
import { wholeMm } from "../../model/measure.ts";
import { rackLengths } from "../../model/rack-lengths.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

const plan = (index: number, more: object) => ({
  hole: ["S1", "S3"][index],
  zone: ["oblong-35", "threaded-35"][index],
  screw: ["cortical-35", "locking-35"][index],
  recipe: ["cortical-neutral", "locking-through-sleeve"][index],
  order: index + 1,
  ...more,
});
const edit = (index: number, more: object) => ({
  [`case/case-a plan.${index}`]: plan(index, more),
});

/** A plan's order is 1, 2, 3 and so on down its lines, a screw to a hole, between two lengths of the rack. */
export const planRunsInOrder: Rule = {
  id: "plan-runs-in-order",
  severity: "stop",
  about: "case",
  summary:
    "The lines of a plan are numbered 1, 2, 3 in the order they stand, each for a hole of its own, from a shorter to a longer length of the rack.",
  why: "A gap or a number used twice hides a line that was lost or moved; a length that no rack holds is a slip.",
  fix: "Correct order, hole or lengths from the surgeon's plan.",
  source: "common practice",
  *check({ catalogue }) {
    for (const { file, plan: lines } of catalogue.cases.values()) {
      const holes = new Set<string>();
      for (const [index, { order, hole, lengths, screw }] of lines.entries()) {
        const at = ["plan", index] as const;
        if (order !== index + 1)
          yield {
            file,
            path: [...at, "order"],
            message: `Expected order ${index + 1} on line ${index + 1}, got ${order}`,
          };
        if (holes.has(hole))
          yield {
            file,
            path: [...at, "hole"],
            message: `Expected one screw in hole ${hole}, got a second`,
          };
        holes.add(hole);
        const rack = rackLengths(known(catalogue.screws, screw));
        const wrong = lengths?.filter((length) => !rack.includes(length)) ?? [];
        if (wrong.length > 0)
          yield {
            file,
            path: [...at, "lengths"],
            message: `Expected lengths of the rack for ${hole}, got ${wrong.map(wholeMm).join(" and ")}`,
          };
        if (lengths && lengths[0] > lengths[1])
          yield {
            file,
            path: [...at, "lengths"],
            message: `Expected the shorter length first for ${hole}, got ${lengths.map(wholeMm).join(" and ")}`,
          };
      }
    }
  },
  examples: [
    passes("1, 2", "S1 is 1, S3 is 2."),
    passes(
      "lengths of the rack",
      "14 to 20, and the rack has both.",
      edit(0, { lengths: [14, 20] }),
    ),
    passes("one length", "14 to 14.", edit(0, { lengths: [14, 14] })),
    fails("a gap in the order", "1, 3.", edit(1, { order: 3 })),
    fails("an order used twice", "1, 1.", edit(1, { order: 1 })),
    fails("a hole used twice", "Two screws in S1.", edit(1, { hole: "S1" })),
    fails("a length no rack has", "14.1 to 20.", edit(0, { lengths: [14.1, 20] })),
    fails("the longer length first", "20 to 14.", edit(0, { lengths: [20, 14] })),
  ],
};
