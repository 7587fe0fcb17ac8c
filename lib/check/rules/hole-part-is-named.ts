import type { Rule, RuleInput } from "../../model/rule.ts";
import { mappedPlate } from "../mapped-plate.ts";
import { sampleCase, sampleRow } from "../sample-sheets.ts";

function* unnamed({ derived, sheets = [] }: RuleInput) {
  for (const sheet of sheets) {
    if (sheet.kind !== "case") continue;
    const plate = mappedPlate(sheet.map, derived.plates);
    for (const { hole } of sheet.rows) {
      const combined = plate?.holes.some(({ label, kind }) => kind === "combined" && hole.split(" ")[0] === label);
      if (combined && !/(threaded|plain) part/.test(hole)) yield { file: sheet.origin, path: [], message: `Expected threaded part or plain part beside hole ${hole} on ${sheet.id}` };
    }
  }
}

/** Each planned hole exists on the plate, and the plan says which part of it the screw goes through, once. */
export const holePartIsNamed: Rule = {
  id: "hole-part-is-named",
  severity: "stop",
  about: "case",
  summary: "Each hole of a plan is a hole of that plate, is filled once, and the plan names the part of it that the screw goes through.",
  why: "A combined opening takes a locking screw in its threaded part or a plain-head screw in its plain part. The wrong part holds neither.",
  fix: "Name a hole of this plate and one of its own parts, and plan each hole once.",
  source: "common practice",
  *check(input) {
    yield* unnamed(input);
    const { catalogue, derived } = input;
    for (const { file, plan, plate, holes } of catalogue.cases.values()) {
      const laid = derived.plates.find((one) => one.plate === plate && one.holesInRow === holes);
      if (laid === undefined) {
        yield { file, path: ["holes"], message: `Expected a length of ${plate} that exists, got ${holes} holes` };
        continue;
      }
      for (const [index, { hole, zone }] of plan.entries()) {
        const own = laid.holes.find(({ label }) => label === hole);
        const parts = own?.zones.map((one) => one.zone) ?? [];
        if (own === undefined) yield { file, path: ["plan", index, "hole"], message: `Unknown hole ${hole}: ${laid.name} has ${laid.holes.map(({ label }) => label).join(", ")}` };
        else if (!parts.includes(zone)) yield { file, path: ["plan", index, "zone"], message: `Expected a part of hole ${hole} (${parts.join(" or ")}), got ${zone}` };
        if (plan.findIndex((one) => one.hole === hole) < index) yield { file, path: ["plan", index, "hole"], message: `Duplicate hole ${hole}: one opening takes one screw` };
      }
    }
  },
  examples: [
    { title: "the threaded part of a combined opening", passes: true, shows: "S3, threaded part 3.5.", edits: [] },
    { title: "a part the hole does not have", passes: false, shows: "S1 has the parts threaded 3.5 and oblong 3.5; the plan says threaded 2.7.", edits: [{ file: "case/case-a", path: ["plan", 0, "zone"], value: "threaded-27" }] },
    { title: "a hole the plate does not have", passes: false, shows: "The plan fills Z9.", edits: [{ file: "case/case-a", path: ["plan", 0, "hole"], value: "Z9" }] },
    { title: "a length the plate does not come in", passes: false, shows: "The plan says 29 holes.", edits: [{ file: "case/case-a", path: ["holes"], value: 29 }] },
    { title: "a case sheet that does not say which part", passes: false, shows: "S3, a combined opening, with no word of its part.", edits: [], sheets: [sampleCase({ rows: [sampleRow("S3")] })] },
    { title: "a case sheet that says which part", passes: true, shows: "S3 threaded part.", edits: [], sheets: [sampleCase({ rows: [sampleRow("S3 threaded part")] })] },
  ],
};
