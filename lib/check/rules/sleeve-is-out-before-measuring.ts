import type { Recipe } from "../../model/recipe.ts";
import type { Rule } from "../../model/rule.ts";
import { keptOtherwise } from "../kept-otherwise.ts";
import { meant } from "../meant.ts";
import { works } from "../work.ts";

function measuredThroughSleeve({ steps }: Recipe): number | undefined {
  const last = steps.findIndex(({ verb }) => verb === "measure");
  const upTo = steps.slice(0, Math.max(0, last));
  const sleeveIn = upTo.findLastIndex(({ verb }) => verb === "turn-in-sleeve");
  const out = upTo.findLastIndex(({ verb }) => verb === "take-out");
  return sleeveIn > out ? last : undefined;
}

/** The sleeve is taken out before the depth gauge goes in, unless the gauge is made to sit on the sleeve. */
export const sleeveIsOutBeforeMeasuring: Rule = {
  id: "sleeve-is-out-before-measuring",
  severity: "stop",
  about: "technique",
  summary:
    "The threaded sleeve is taken out before the depth gauge goes in, unless that gauge is made to sit on the sleeve.",
  why: "A gauge read through a sleeve 36 mm long reads 36 mm too much, and nobody in the room can see it.",
  fix: "Put the step that takes the sleeve out before the step that measures.",
  source: "common practice",
  *check(input) {
    const all = works(input);
    for (const recipe of input.catalogue.recipes.values()) {
      const index = measuredThroughSleeve(recipe);
      if (index === undefined) continue;
      const gauges = all
        .filter((work) => work.recipe.id === recipe.id)
        .map((work) => meant(work, "gauge"));
      if (gauges.length > 0 && gauges.every((gauge) => gauge?.seat === "sleeve")) continue;
      const severity = keptOtherwise(input.catalogue, recipe);
      yield {
        file: recipe.file,
        path: ["steps", index],
        severity,
        message:
          "Expected the sleeve to be taken out before measuring, got a depth gauge while the sleeve is in",
      };
    }
  },
  examples: [
    {
      title: "sleeve out, then measure",
      passes: true,
      shows: "Turn in sleeve, drill, take the sleeve out, measure.",
      edits: [],
    },
    {
      title: "measuring while the sleeve is in",
      passes: false,
      shows: "Turn in sleeve, drill, measure: a sleeve 36 mm long adds 36 mm.",
      edits: [
        {
          file: "recipe/locking-through-sleeve",
          path: ["steps"],
          value: [
            {
              id: "sleeve",
              verb: "turn-in-sleeve",
              say: "Turn the sleeve in by hand until it stands square.",
              uses: { kind: "threaded-sleeve" },
            },
            {
              id: "drill",
              verb: "drill-pilot",
              say: "Drill through the sleeve.",
              uses: { kind: "drill", use: "pilot" },
            },
            {
              id: "measure",
              verb: "measure",
              say: "Measure the depth.",
              uses: { kind: "depth-gauge" },
            },
          ],
        },
      ],
    },
  ],
};
