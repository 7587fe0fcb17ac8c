import { known } from "../../model/catalogue.ts";
import type { Danger } from "../../model/recipe.ts";
import type { Rule } from "../../model/rule.ts";
import { actsOf } from "../dangers.ts";
import { fails, passes } from "../example.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

const worded = (danger: Danger): string => danger.replaceAll("-", " ");
const recipe = "recipe/locking-through-sleeve";

/** A caution stands at the step whose act it guards, or is meant for the whole card; never at another step. */
export const cautionStandsAtItsAct: Rule = {
  id: "caution-stands-at-its-act",
  severity: "stop",
  about: "technique",
  summary:
    "A required caution stands at a step whose act can go wrong that way, where there is such a step, and at each of them where all may be left out, unless it is among the cautions of the whole card; at any other step it is out of place.",
  why: "A caution is read while the hand does what it warns of. At another step it is read too early or not at all.",
  fix: "Move the caution to the step whose act it guards, or name it in cautions, for the whole card.",
  source: "common practice",
  *check({ catalogue }) {
    const guarded = (caution: string) => known(catalogue.cautions, caution).against;
    for (const technique of [...catalogue.recipes.values(), ...catalogue.procedures.values()]) {
      const { file, steps, required_cautions } = technique;
      const severity = keptOtherwise(catalogue, technique);
      for (const [index, { id, verb, cautions }] of steps.entries())
        for (const [place, caution] of cautions.entries()) {
          const danger = guarded(caution);
          if (danger !== undefined && !actsOf[danger].includes(verb))
            yield {
              file,
              path: ["steps", index, "cautions", place],
              severity,
              message: `Expected the caution against ${worded(danger)} at a step to ${actsOf[danger].join(" or ") || "no one act"}, got it at "${id}" (${verb})`,
            };
        }
      for (const [place, caution] of required_cautions.entries()) {
        const danger = guarded(caution);
        const acts = steps.filter(({ verb }) => danger && actsOf[danger].includes(verb));
        if (acts.length === 0 || technique.cautions.includes(caution)) continue;
        const warned = acts.filter(({ cautions }) => cautions.includes(caution));
        const skipped = acts.every(({ skip }) => skip !== undefined);
        if (warned.length < (skipped ? acts.length : 1))
          yield {
            file,
            path: ["required_cautions", place],
            severity,
            message: `Expected ${caution} at step ${acts.map(({ id }) => `"${id}"`).join(skipped ? " and " : " or ")}, got it at ${warned.map(({ id }) => `"${id}"`).join() || "none"}`,
          };
      }
    }
  },
  examples: [
    passes("at its act", "No power: at the step that tightens to the limit."),
    fails("at another act", "No power: at the step that drills.", {
      [`${recipe} steps.2.cautions`]: ["sharp-drill", "no-power"],
    }),
    fails("at no step", "No power is required, and stands at no step.", {
      [`${recipe} steps.6.cautions`]: [],
    }),
    passes("for the whole card", "No power is required, and named for the whole card.", {
      [`${recipe} steps.6.cautions`]: [],
      [`${recipe} cautions`]: ["no-power"],
    }),
    passes("where nothing is done", "The card is not sterile: required, and at no step.", {
      "caution/sharp-drill against": "unsterile-card",
      [`${recipe} steps.2.cautions`]: [],
      "recipe/cortical-neutral steps.1.cautions": [],
      "recipe/cortical-compression steps.2.cautions": [],
      "recipe/lag-through-plate steps.4.cautions": [],
    }),
  ],
};
