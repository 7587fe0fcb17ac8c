import type { Verb } from "../../model/recipe.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

/** What may be left out, when someone who may decides so; the rest of a technique stands. */
const optional: ReadonlySet<Verb> = new Set([
  "confirm",
  "hold",
  "measure",
  "read-marks",
  "tap",
  "countersink",
]);
/** The one stands in for the other. */
const other = { measure: "read-marks", "read-marks": "measure" } as const;

const skip = (by: string) => ({ when: "Nobody asks for it.", by });

/** Only steps that can be done without carry words that let them be left out. */
export const guardingStepIsNotSkipped: Rule = {
  id: "guarding-step-is-not-skipped",
  severity: "stop",
  about: "technique",
  summary:
    "Only tapping, countersinking, holding, confirming and one of two ways of measuring may be left out; a sleeve, a drill hole, a screw, the last turns, the final pass and the count may not.",
  why: "A step with words that allow leaving it out is left out when time is short.",
  fix: "Take skip off the step, or write the technique without it as one of its own.",
  source: "common practice",
  *check({ catalogue }) {
    for (const technique of [...catalogue.recipes.values(), ...catalogue.procedures.values()]) {
      const { file, steps } = technique;
      for (const [index, { verb, skip: left }] of steps.entries()) {
        if (left === undefined) continue;
        const pair = verb === "measure" || verb === "read-marks" ? other[verb] : undefined;
        const alone = pair !== undefined && !steps.some((step) => step.verb === pair);
        if (optional.has(verb) && !alone) continue;
        const message = alone
          ? `Expected the other way of measuring beside a step "${verb}" that may be left out, got none`
          : `Expected a step "${verb}" that is always done, got one that may be left out`;
        yield {
          file,
          path: ["steps", index, "skip"],
          severity: keptOtherwise(catalogue, technique),
          message,
        };
      }
    }
  },
  examples: [
    passes("a tap", "The surgeon may leave out the tap of a screw that cuts its own thread."),
    fails("the last turns", "The step with the limiter may be left out.", {
      "recipe/locking-through-sleeve steps.6.skip": skip("surgeon"),
    }),
    fails("the only measuring", "The gauge may be left out, and no marks are read.", {
      "recipe/cortical-neutral steps.3.skip": skip("instructions-or-protocol"),
    }),
    fails("the final pass", "The last step of the procedure may be left out.", {
      "procedure/lower-fibula steps.5.skip": skip("surgeon"),
    }),
  ],
};
