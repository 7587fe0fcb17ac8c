import { known } from "../../model/catalogue.ts";
import type { Defined } from "../../model/definition.ts";
import type { DrawnPlate } from "../../model/plate.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** How many holes of each opening are placed one by one; the row's opening is there, uncounted. */
function placed({ row, holes }: Defined<DrawnPlate>): ReadonlyMap<string, number> {
  const counts = new Map([[row.opening, 0]]);
  for (const { opening } of holes) counts.set(opening, (counts.get(opening) ?? 0) + 1);
  return counts;
}

const plate = "plate/lower-fibula-left";
const counted = [{ opening: "c35" }, { opening: "t27", holes: 2 }];

/** The holes of a plate are those that its drawing's hole schedule counts. */
export const holesAgreeWithTheSchedule: Rule = {
  id: "holes-agree-with-the-schedule",
  severity: "stop",
  about: "plate",
  summary:
    "Where a plate states its drawing's hole schedule, its row and its placed holes are of those openings, in those numbers.",
  why: "A hole drawn with the wrong opening asks for the wrong screw, drill and guide, and looks right on the map.",
  fix: "Compare holes and schedule with the drawing.",
  source: "common practice",
  *check({ catalogue }) {
    for (const one of catalogue.plates.values()) {
      if (!("schedule" in one) || one.schedule === undefined) continue;
      const there = placed(one);
      const stated = new Map(one.schedule.map(({ opening, holes = 0 }) => [opening, holes]));
      for (const opening of new Set([...there.keys(), ...stated.keys()])) {
        const [got, expected] = [there.get(opening), stated.get(opening)];
        if (got === expected) continue;
        const { name } = known(catalogue.openings, opening);
        yield {
          file: one.file,
          path: ["schedule"],
          message: `Expected ${expected ?? "no"} placed holes "${name}" in ${one.name}, as its schedule says, got ${got ?? "none"}`,
        };
      }
    }
  },
  examples: [
    passes("as counted", "Two threaded round holes 2.7, and a row of combined openings.", {
      [`${plate} schedule`]: counted,
    }),
    passes("no schedule", "The plate states none."),
    fails("another opening", "Hole H2 is a combined opening; the schedule counts two of 2.7.", {
      [`${plate} schedule`]: counted,
      [`${plate} holes.1.opening`]: "c35",
    }),
    fails("another row", "The row is of holes 2.7; the schedule has combined openings.", {
      [`${plate} schedule`]: counted,
      [`${plate} row.opening`]: "t27",
    }),
  ],
};
