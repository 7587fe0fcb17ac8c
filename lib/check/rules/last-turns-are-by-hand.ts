import type { Catalogue } from "../../model/catalogue.ts";
import { known } from "../../model/catalogue.ts";
import type { Recipe } from "../../model/recipe.ts";
import type { Rule } from "../../model/rule.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

function warnsOfPower({ cautions }: Catalogue, recipe: Recipe): boolean {
  const ids = [
    ...recipe.cautions,
    ...recipe.required_cautions,
    ...recipe.steps.flatMap((step) => step.cautions),
  ];
  return ids.some((id) => known(cautions, id).against === "power-finish");
}

/** A locking screw is finished by hand with its limiter, and the card warns of power. */
export const lastTurnsAreByHand: Rule = {
  id: "last-turns-are-by-hand",
  severity: "stop",
  about: "technique",
  summary:
    "A technique for locking screws ends on a step by hand with the torque limiter, and carries the caution against power for the last turns.",
  why: "In a bench test a limiter made for 1.5 N·m let 5.4 N·m through when turned by a fast power tool: heads jam and cannot be taken out.",
  fix: "Add the step that tightens to the limit after the step that drives the screw, and the caution about power to required_cautions.",
  source: "Am J Orthop 2016;45(3):E114",
  *check({ catalogue }) {
    for (const recipe of catalogue.recipes.values()) {
      const { steps, file, screw_classes } = recipe;
      if (!screw_classes.includes("locking")) continue;
      const severity = keptOtherwise(catalogue, recipe);
      const driven = steps.findLastIndex(({ verb }) => verb === "drive-screw");
      const tightened = steps.findIndex(
        ({ verb, uses, also }) =>
          verb === "tighten-to-limit" &&
          [uses, ...also].some((query) => query?.kind === "torque-limiter"),
      );
      if (tightened < 0)
        yield {
          file,
          path: ["steps"],
          severity,
          message: "Missing the step that tightens by hand with the torque limiter",
        };
      else if (driven > tightened)
        yield {
          file,
          path: ["steps", driven],
          severity,
          message:
            "Expected tightening by hand to come last, got a step that drives the screw after it",
        };
      if (!warnsOfPower(catalogue, recipe))
        yield {
          file,
          path: ["required_cautions"],
          severity,
          message: "Missing the caution against power for the last turns",
        };
    }
  },
  examples: [
    {
      title: "limiter by hand, with the caution",
      passes: true,
      shows: "Drive the screw, stop before the head enters, then hand and limiter 1.6 N·m.",
      edits: [],
    },
    {
      title: "driven to the stop",
      passes: false,
      shows: "The only step drives the screw; no limiter follows.",
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
            { id: "out", verb: "take-out", say: "Take the sleeve out." },
            {
              id: "drive",
              verb: "drive-screw",
              say: "Drive the screw to the stop.",
              uses: { kind: "driver-shaft" },
            },
          ],
        },
      ],
    },
  ],
};
