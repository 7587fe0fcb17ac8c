import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

const recipe = "recipe/locking-through-sleeve";

/** A locking screw in the near cortex alone is never the usual way; the surgeon asks for it. */
export const nearCortexLockingIsAskedFor: Rule = {
  id: "near-cortex-locking-is-asked-for",
  severity: "stop",
  about: "technique",
  summary:
    "A technique that drills the near cortex only for a locking screw is not the default, and the surgeon decides at that step.",
  why: "A screw that holds one cortex holds less; it is chosen, never fallen into.",
  fix: "Set default: false, and decides: surgeon at the drilling step.",
  source: "common practice",
  *check({ catalogue }) {
    for (const technique of catalogue.recipes.values()) {
      const { file, steps, screw_classes } = technique;
      const index = steps.findIndex(
        ({ verb, near_cortex_only }) => verb === "drill-pilot" && near_cortex_only,
      );
      if (index < 0 || !screw_classes.includes("locking")) continue;
      const severity = keptOtherwise(catalogue, technique);
      if (technique.default)
        yield {
          file,
          path: ["default"],
          severity,
          message: "Expected a technique used only when the surgeon asks, got a default",
        };
      if (steps[index]?.decides !== "surgeon")
        yield {
          file,
          path: ["steps", index],
          severity,
          message: "Missing that the surgeon decides to drill the near cortex only",
        };
    }
  },
  examples: [
    passes("asked for", "Near cortex only: default false, the surgeon decides.", {
      [`${recipe} default`]: false,
      [`${recipe} steps.2.near_cortex_only`]: true,
      [`${recipe} steps.2.decides`]: "surgeon",
    }),
    fails("the usual way", "Near cortex only in a default technique.", {
      [`${recipe} steps.2.near_cortex_only`]: true,
      [`${recipe} steps.2.decides`]: "surgeon",
    }),
    fails("nobody decides", "Near cortex only, and no surgeon decides.", {
      [`${recipe} default`]: false,
      [`${recipe} steps.2.near_cortex_only`]: true,
    }),
  ],
};
