import type { Defined } from "../../model/definition.ts";
import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import type { Screw } from "../../model/screw.ts";
import { fails, passes } from "../example.ts";

/** Screws of one system that are alike in thread or in head. */
function* alike(screws: readonly Defined<Screw>[]) {
  for (const [index, a] of screws.entries())
    for (const b of screws.slice(index + 1)) {
      if (a.system !== b.system) continue;
      if (a.major === b.major) yield [a, b, `thread ${mm(a.major)}`] as const;
      else if (a.head.form === b.head.form && a.head.diameter === b.head.diameter)
        yield [a, b, `head ${mm(a.head.diameter)}`] as const;
    }
}

/** Screws that are alike are turned by one driver. */
export const oneSizeTakesOneDriver: Rule = {
  id: "one-size-takes-one-driver",
  severity: "sign",
  about: "screw",
  summary: "Screws of one system with the same thread, or the same head, have the same drive.",
  why: "Whoever has the driver of one in hand puts it into the other. In a drive a size larger it slips, and the drive is torn.",
  fix: "Compare the drives with the drawings; sign where the maker really gives such screws two drives.",
  source: "common practice",
  *check({ catalogue }) {
    for (const [a, b, what] of alike([...catalogue.screws.values()]))
      if (a.drive !== b.drive)
        yield {
          file: b.file,
          path: ["drive"],
          message: `Expected one drive for ${a.called} and ${b.called} (${what}), got ${a.drive} and ${b.drive}`,
        };
  },
  examples: [
    passes("one drive", "Cortical 3.5 and locking 3.5: hexalobular 20."),
    fails("two drives for one thread", "Cortical 3.5: hexalobular 20; locking 3.5: 10.", {
      "screw/locking-35 drive": "hexalobular-10",
    }),
    fails("two drives for one head", "Heads of 5.4, threaded: hexalobular 10 and 20.", {
      "screw/locking-27 head.diameter": 5.4,
    }),
  ],
};
