import { type Catalogue, known } from "../../model/catalogue.ts";
import type { ProcedureStep, Recipe } from "../../model/recipe.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

const asks = ({ recipes }: Catalogue, { fills }: ProcedureStep, need: Recipe["needs"][number]) =>
  fills !== undefined && known(recipes, fills.recipe).needs.includes(need);

const step = (id: string, say: string, recipe: string) => ({
  id,
  verb: "drive-screw",
  say,
  decides: "surgeon",
  fills: { recipe, screw: "cortical-35", zone: "oblong-35", region: "shaft", repeat: "one" },
});
const [loaded, lag] = [
  step("loaded", "Loaded screw.", "cortical-compression"),
  step("lag", "Lag screw.", "lag-through-plate"),
];
const two = (first: object, second: object) => ({
  "procedure/lower-fibula steps.1": first,
  "procedure/lower-fibula steps.2": second,
});

/** The plate is drawn along before a lag screw through it fixes the fracture. */
export const loadedComesBeforeLag: Rule = {
  id: "loaded-comes-before-lag",
  severity: "stop",
  about: "technique",
  summary: "In an order of work no loaded screw comes after a lag screw through the plate.",
  why: "Once the lag screw holds both sides together, a loaded screw can no longer close the gap; it bends the plate or strips.",
  fix: "Put the loaded screw before the lag screw.",
  source: "common practice",
  *check({ catalogue }) {
    for (const procedure of catalogue.procedures.values()) {
      const { file, steps } = procedure;
      const first = steps.findIndex((one) => asks(catalogue, one, "gliding"));
      const late = steps.findLastIndex((one) => asks(catalogue, one, "travel"));
      if (first >= 0 && late > first)
        yield {
          file,
          path: ["steps", late],
          severity: keptOtherwise(catalogue, procedure),
          message: `Expected the loaded screw of step "${steps[late]?.id}" before the lag screw of step "${steps[first]?.id}"`,
        };
    }
  },
  examples: [
    passes("loaded, then lag", "Step 2 loads, step 3 lags.", two(loaded, lag)),
    fails("lag, then loaded", "Step 2 lags, step 3 loads.", two(lag, loaded)),
  ],
};
