import { known } from "../../model/catalogue.ts";
import type { Rule } from "../../model/rule.ts";

/** A case's plate is made for its side, or for either. */
export const plateSideMatchesTheCase: Rule = {
  id: "plate-side-matches-the-case",
  severity: "stop",
  about: "case",
  summary: "The plate of a left case is a left plate or has no side; likewise on the right.",
  why: "A plate for the wrong side almost fits, and has been implanted that way.",
  fix: "Ask which side it is, then correct the side or the plate.",
  source:
    "Alanazi et al., Surg J 2018, doi 10.1055/s-0038-1673340 (wrong-side implants); common practice",
  *check({ catalogue }) {
    for (const { file, side, plate } of catalogue.cases.values()) {
      const { side: made, name } = known(catalogue.plates, plate);
      if (made === "none" || made === side) continue;
      yield {
        file,
        path: ["side"],
        message: `Expected a plate for the ${side.toUpperCase()} side, got ${name} (${made.toUpperCase()})`,
      };
    }
  },
  examples: [
    {
      title: "a plate of the case's side",
      passes: true,
      shows: "A left case and a LEFT plate.",
      edits: [],
    },
    {
      title: "a left case and a right plate",
      passes: false,
      shows: "The case says right, the plate is LEFT.",
      edits: [{ file: "case/case-a", path: ["side"], value: "right" }],
    },
  ],
};
