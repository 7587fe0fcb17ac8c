import { known } from "../../model/catalogue.ts";
import type { Verb } from "../../model/recipe.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

const fixes = new Set<Verb>(["hold", "seat-hooks", "drive-screw", "watch-gap", "tighten-to-limit"]);
const steps = "procedure/lower-fibula steps";

/** The side is said at the latest when the plate is laid on. */
export const sideIsSaidBeforeThePlateIsHeld: Rule = {
  id: "side-is-said-before-the-plate-is-held",
  severity: "stop",
  about: "technique",
  summary:
    "The caution to say the side stands at the first step that holds or fixes the plate, or before it.",
  why: "A side that is said after the plate is held is said to a plate that is already on the bone.",
  fix: "Put the step that reads the side before the step that holds the plate.",
  source: "common practice",
  *check({ catalogue }) {
    for (const procedure of catalogue.procedures.values()) {
      const said = procedure.steps.findIndex(({ cautions }) =>
        cautions.some((id) => known(catalogue.cautions, id).against === "wrong-side"),
      );
      const held = procedure.steps.findIndex(({ verb }) => fixes.has(verb));
      if (said >= 0 && held >= 0 && said > held)
        yield {
          file: procedure.file,
          path: ["steps", said],
          severity: keptOtherwise(catalogue, procedure),
          message: `Expected the side to be said before step "${procedure.steps[held]?.id}", got it at step "${procedure.steps[said]?.id}"`,
        };
    }
  },
  examples: [
    passes("said while it is held", "Step 1 holds the plate, with the caution."),
    fails("said after it is held", "Step 1 holds, step 2 has the caution.", {
      [`${steps}.0.cautions`]: [],
      [`${steps}.1.cautions`]: ["say-side"],
    }),
  ],
};
