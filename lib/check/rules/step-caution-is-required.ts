import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** A caution at a step of a technique or procedure is among those it requires. */
export const stepCautionIsRequired: Rule = {
  id: "step-caution-is-required",
  severity: "stop",
  about: "technique",
  summary: "Every caution at a step of a technique or procedure is among its required cautions.",
  why: "The list of required cautions is what a printed card is checked against. A caution that stands only at its step would be lost with the step, in silence.",
  fix: "Add the caution to required_cautions, or take it from the step.",
  source: "common practice",
  *check({ catalogue }) {
    for (const { file, name, steps, required_cautions } of [
      ...catalogue.recipes.values(),
      ...catalogue.procedures.values(),
    ])
      for (const [index, { id, cautions }] of steps.entries())
        for (const [place, caution] of cautions.entries())
          if (!required_cautions.includes(caution))
            yield {
              file,
              path: ["steps", index, "cautions", place],
              message: `Expected caution "${caution}" of step "${id}" among the required cautions of ${name}`,
            };
  },
  examples: [
    passes("in both lists", "No power: required, and at the step that tightens."),
    fails("at a step, not required", "The list of required cautions is empty.", {
      "recipe/locking-through-sleeve required_cautions": [],
    }),
    fails(
      "at a step of a procedure",
      "The count has a caution that the procedure does not require.",
      {
        "procedure/lower-fibula steps.7.cautions": ["sharp-drill"],
      },
    ),
  ],
};
