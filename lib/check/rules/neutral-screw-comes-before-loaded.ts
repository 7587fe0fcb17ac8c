import { type Catalogue, known } from "../../model/catalogue.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

/** True for a technique that shifts the plate: it asks for an oblong hole with travel. */
const loads = ({ recipes }: Catalogue, recipe: string): boolean =>
  known(recipes, recipe).needs.includes("travel");

const fill = (recipe: string) => ({
  recipe,
  screw: "cortical-35",
  zone: "oblong-35",
  region: "shaft",
  repeat: "one",
});

/** Something holds one side of the plate before a screw is loaded on the other. */
export const neutralScrewComesBeforeLoaded: Rule = {
  id: "neutral-screw-comes-before-loaded",
  severity: "stop",
  about: "technique",
  summary:
    "Before the first loaded screw a screw is in that does not shift the plate, or the hooks are seated.",
  why: "A loaded screw pulls the plate along; where nothing holds its other side, nothing closes.",
  fix: "Put a neutral screw, or the seating of the hooks, before the loaded one.",
  source: "common practice",
  *check({ catalogue }) {
    for (const procedure of catalogue.procedures.values()) {
      const { steps, file } = procedure;
      const loaded = steps.findIndex(({ fills }) => fills && loads(catalogue, fills.recipe));
      const held = steps
        .slice(0, loaded)
        .some(({ verb, fills }) => verb === "seat-hooks" || fills !== undefined);
      if (loaded >= 0 && !held)
        yield {
          file,
          path: ["steps", loaded],
          severity: keptOtherwise(catalogue, procedure),
          message:
            "Expected a neutral screw or seated hooks before the first loaded screw, got neither",
        };
    }
    for (const { file, plan, plate } of catalogue.cases.values()) {
      const [first] = [...plan].sort((a, b) => a.order - b.order);
      const drawn = known(catalogue.plates, plate);
      const hooked = "hooks" in drawn && drawn.hooks !== undefined;
      if (first && !hooked && loads(catalogue, first.recipe))
        yield {
          file,
          path: ["plan", plan.indexOf(first), "order"],
          severity: "sign",
          message: `Expected a screw that does not shift the plate before the loaded one in ${first.hole}, got none`,
        };
    }
  },
  examples: [
    passes("neutral, then loaded", "Step 2 neutral, step 3 loaded.", {
      "procedure/lower-fibula steps.2.fills": fill("cortical-compression"),
    }),
    fails("loaded first", "Step 2 is the first screw, and it is loaded.", {
      "procedure/lower-fibula steps.1.fills": fill("cortical-compression"),
    }),
    passes("hooks seated first", "Step 1 seats the hooks, step 2 is loaded.", {
      "procedure/lower-fibula steps.0.verb": "seat-hooks",
      "procedure/lower-fibula steps.1.fills": fill("cortical-compression"),
    }),
    fails("a plan that loads first", "Hole S1 is first in the plan, and it is loaded.", {
      "case/case-a plan.0.recipe": "cortical-compression",
    }),
  ],
};
