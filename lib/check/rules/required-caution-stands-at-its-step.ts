import type { Breach, Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

type Cautioned = {
  readonly file: string;
  readonly name: string;
  readonly required_cautions: readonly string[];
  readonly steps: readonly { readonly id: string; readonly cautions: readonly string[] }[];
};

function* adrift({ file, name, required_cautions, steps }: Cautioned): Generator<Breach> {
  const atSteps = new Set(steps.flatMap(({ cautions }) => cautions));
  for (const [index, caution] of required_cautions.entries())
    if (!atSteps.has(caution))
      yield {
        file,
        path: ["required_cautions", index],
        message: `Expected required caution "${caution}" at a step of ${name}, got it at none`,
      };
}

function* unasked({ file, name, required_cautions, steps }: Cautioned): Generator<Breach> {
  for (const [index, { id, cautions }] of steps.entries())
    for (const [place, caution] of cautions.entries())
      if (!required_cautions.includes(caution))
        yield {
          file,
          path: ["steps", index, "cautions", place],
          message: `Expected caution "${caution}" of step "${id}" among the required cautions of ${name}`,
        };
}

/** What a technique requires to be cautioned of stands at a step, and what stands at a step is required. */
export const requiredCautionStandsAtItsStep: Rule = {
  id: "required-caution-stands-at-its-step",
  severity: "stop",
  about: "technique",
  summary:
    "Every required caution stands at the step it is about; every caution at a step of a technique is required.",
  why: "The two lists witness for one another: a caution lost from one of them would be lost in silence.",
  fix: "Add the caution where it is missing, or take it out of both.",
  source: "common practice",
  *check({ catalogue }) {
    for (const recipe of catalogue.recipes.values()) {
      yield* adrift(recipe);
      yield* unasked(recipe);
    }
    for (const procedure of catalogue.procedures.values()) yield* adrift(procedure);
  },
  examples: [
    passes("in both lists", "No power: required, and at the step that tightens."),
    fails("required, at no step", "The step that tightens has no caution.", {
      "recipe/locking-through-sleeve steps.6.cautions": [],
    }),
    fails("at a step, not required", "The list of required cautions is empty.", {
      "recipe/locking-through-sleeve required_cautions": [],
    }),
  ],
};
