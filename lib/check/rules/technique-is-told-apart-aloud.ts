import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** Two techniques for the same hole and screw are called out differently. */
export const techniqueIsToldApartAloud: Rule = {
  id: "technique-is-told-apart-aloud",
  severity: "stop",
  about: "technique",
  summary:
    "Techniques for one kind of hole and class of screw differ in the phrase that is called out with the screw.",
  why: "Called out alike, a loaded or a lag screw is handed over as a plain one.",
  fix: "Give the technique its phrase; at most one of them is called out without.",
  source: "common practice",
  *check({ catalogue }) {
    const recipes = [...catalogue.recipes.values()];
    for (const [index, one] of recipes.entries())
      for (const other of recipes.slice(0, index)) {
        const meet =
          one.zone_kinds.some((kind) => other.zone_kinds.includes(kind)) &&
          one.screw_classes.some((kind) => other.screw_classes.includes(kind));
        if (meet && (one.phrase ?? "") === (other.phrase ?? ""))
          yield {
            file: one.file,
            path: ["phrase"],
            message: `Expected another phrase for ${one.name} than for ${other.name}, got ${one.phrase ? `"${one.phrase}"` : "none"} for both`,
          };
      }
  },
  examples: [
    passes("told apart", 'Neutral without a phrase, loaded "offset, for compression".'),
    fails("two without a phrase", "The loaded screw is called out as a neutral one.", {
      "recipe/cortical-compression phrase": undefined,
    }),
    fails("one phrase for two", 'Both "as lag screw".', {
      "recipe/cortical-compression phrase": "as lag screw",
    }),
  ],
};
