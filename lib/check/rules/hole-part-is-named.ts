import type { Rule, RuleInput } from "../../model/rule.ts";
import { mappedPlate } from "../mapped-plate.ts";
import { sampleCase, sampleRow } from "../sample-sheets.ts";

function* unnamed({ derived, sheets = [] }: RuleInput) {
  for (const sheet of sheets) {
    if (sheet.kind !== "case") continue;
    const plate = mappedPlate(sheet.map, derived.plates);
    for (const { hole } of sheet.rows) {
      const named = new Set(hole.match(/\b[A-Z]\d{1,2}\b/g) ?? []);
      const combined = plate?.holes.some(
        ({ label, kind }) => kind === "combined" && named.has(label),
      );
      if (combined && !/(threaded|plain) part/.test(hole))
        yield {
          file: sheet.origin,
          path: [],
          message: `Expected threaded part or plain part beside hole ${hole} on ${sheet.id}`,
        };
    }
  }
}

/** Each planned opening takes one screw, and the case sheet says through which of its parts. */
export const holePartIsNamed: Rule = {
  id: "hole-part-is-named",
  severity: "stop",
  about: "case",
  summary:
    "Each opening is filled once, and the case sheet says whether the screw goes through its threaded part or its plain part.",
  why: "A combined opening takes a locking screw in its threaded part or a plain-head screw in its plain part. The wrong part holds neither.",
  fix: "Plan each hole once; name the zone, and the sheet says which part it is.",
  source: "common practice",
  *check(input) {
    yield* unnamed(input);
    for (const { file, plan } of input.catalogue.cases.values()) {
      for (const [index, { hole }] of plan.entries()) {
        if (plan.findIndex((one) => one.hole === hole) < index)
          yield {
            file,
            path: ["plan", index, "hole"],
            message: `Duplicate hole ${hole}: one opening takes one screw`,
          };
      }
    }
  },
  examples: [
    {
      title: "one screw in each opening",
      passes: true,
      shows: "S1 plain part, S3 threaded part.",
      edits: [],
    },
    {
      title: "both parts of one opening",
      passes: false,
      shows: "S3 plain part, and S3 threaded part: one opening takes one screw.",
      edits: [{ file: "case/case-a", path: ["plan", 0, "hole"], value: "S3" }],
    },
    {
      title: "a case sheet that does not say which part",
      passes: false,
      shows: "S3, a combined opening, with no word of its part.",
      edits: [],
      sheets: [sampleCase({ rows: [sampleRow("S3")] })],
    },
    {
      title: "a case sheet that says which part",
      passes: true,
      shows: "S3 threaded part.",
      edits: [],
      sheets: [sampleCase({ rows: [sampleRow("S3 threaded part")] })],
    },
  ],
};
