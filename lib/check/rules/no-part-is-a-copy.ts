import type { Rule, RuleInput } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** What a part states, without what tells its file from another. */
function stated(part: object): string {
  const other = new Set(["id", "file", "gtin"]);
  return JSON.stringify(Object.entries(part).filter(([key]) => !other.has(key)));
}

const parts = ({ catalogue }: RuleInput) => [
  catalogue.screws,
  catalogue.instruments,
  catalogue.zones,
  catalogue.openings,
  catalogue.plates,
  catalogue.trays,
];

/** A part that states the same as another is a file that was copied and not yet changed. */
export const noPartIsACopy: Rule = {
  id: "no-part-is-a-copy",
  severity: "stop",
  about: "instrument",
  summary:
    "No two screws, instruments, parts of holes, openings, plates or trays of a system state the same under two ids.",
  why: "A file that was copied to begin another part, and not changed, is a second candidate for each place of the first.",
  fix: "Write the facts of the new part, or delete the copy.",
  source: "common practice",
  *check(input) {
    for (const map of parts(input)) {
      const first = new Map<string, { readonly id: string; readonly file: string }>();
      for (const part of map.values()) {
        const same = first.get(stated(part));
        if (same === undefined) first.set(stated(part), part);
        else
          yield {
            file: part.file,
            path: [],
            message: `Expected ${part.id} to state something else than ${same.id} (${same.file}), got the same`,
          };
      }
    }
  },
  examples: [
    passes("a copy with another reach", "Drill 2.5 as drill 2.0, with 1 mm less reach.", {
      "instrument/drill-25": drill(110),
      "instrument/drill-20": drill(111),
    }),
    fails("a copy", "Drill 2.5 with all that drill 2.0 states.", {
      "instrument/drill-25": drill(110),
      "instrument/drill-20": drill(110),
    }),
  ],
};

function drill(reach: number) {
  return {
    kind: "drill",
    name: "drill 2.0",
    mark: "2.0",
    diameter: 2,
    use: "pilot",
    length: 150,
    reach,
    coupling: "drill-small",
    source: { document: "pebblefin-ifu", section: "Table 1" },
  };
}
