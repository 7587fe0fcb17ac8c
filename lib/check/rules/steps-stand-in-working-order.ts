import type { Procedure, Recipe, Verb } from "../../model/recipe.ts";
import type { Breach, Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** Where in the work of one screw a verb belongs; a confirmation may stand anywhere. */
const screwWork: readonly (readonly Verb[])[] = [
  ["hold", "seat-hooks"],
  ["aim-guide", "turn-in-sleeve"],
  ["drill-gliding"],
  ["place-insert"],
  ["drill-pilot"],
  ["read-marks"],
  ["take-out"],
  ["countersink"],
  ["measure"],
  ["tap"],
  ["drive-screw"],
  ["tighten-by-hand", "tighten-to-limit", "watch-gap"],
  ["final-pass"],
];
/** The same for a whole plate, where screws are driven in any order of their own. */
const plateWork: readonly (readonly Verb[])[] = [
  ["hold", "seat-hooks"],
  ["drive-screw", "watch-gap", "tighten-by-hand", "tighten-to-limit"],
  ["take-out-wires"],
  ["final-pass"],
  ["count"],
];

function* outOfTurn(
  { file, steps }: { readonly file: string } & Pick<Recipe | Procedure, "steps">,
  order: readonly (readonly Verb[])[],
): Generator<Breach> {
  let [furthest, before] = [-1, ""];
  for (const [index, { verb, id }] of steps.entries()) {
    const place = order.findIndex((verbs) => verbs.includes(verb));
    if (place < 0) continue;
    if (place < furthest)
      yield {
        file,
        path: ["steps", index, "verb"],
        message: `Expected step "${id}" (${verb}) before step "${before}"`,
      };
    else [furthest, before] = [place, id];
  }
}

/** Steps stand in the order in which one builds on the other. */
export const stepsStandInWorkingOrder: Rule = {
  id: "steps-stand-in-working-order",
  severity: "stop",
  about: "technique",
  summary:
    "A technique guides, drills, clears, measures, taps, drives and tightens in that order; a procedure holds, fixes, takes wires out and tightens once more, and counts.",
  why: "Read aloud step by step, a swapped pair of lines is done in the swapped order.",
  fix: "Put the steps in the order in which the hands work.",
  source: "common practice",
  *check({ catalogue }) {
    for (const recipe of catalogue.recipes.values()) yield* outOfTurn(recipe, screwWork);
    for (const procedure of catalogue.procedures.values()) yield* outOfTurn(procedure, plateWork);
  },
  examples: [
    passes("in working order", "Guide, pilot drill, gauge, tap, driver, by hand."),
    fails("measured before drilled", "Step 2 measures, step 4 drills.", {
      "recipe/cortical-neutral steps.1.verb": "measure",
      "recipe/cortical-neutral steps.3.verb": "drill-pilot",
    }),
    fails("held after the first screw", "Step 2 holds the plate that step 1 has fixed.", {
      "procedure/lower-fibula steps.0.verb": "drive-screw",
      "procedure/lower-fibula steps.1.verb": "hold",
    }),
  ],
};
