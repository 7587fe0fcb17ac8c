import { known } from "../../model/catalogue.ts";
import type { Procedure } from "../../model/recipe.ts";
import type { Rule } from "../../model/rule.ts";
import type { Case } from "../../model/site.ts";
import { fails, passes } from "../example.ts";

type Planned = Case["plan"][number];

const neutral = {
  hole: "S1",
  zone: "oblong-35",
  screw: "cortical-35",
  recipe: "cortical-neutral",
};
const locking = {
  hole: "S3",
  zone: "threaded-35",
  screw: "locking-35",
  recipe: "locking-through-sleeve",
};
const asked = { "case/case-a procedure": "lower-fibula" };
const planned = (...screws: readonly object[]) =>
  Object.fromEntries(
    screws.map((screw, at) => [`case/case-a plan.${at}`, { ...screw, order: at + 1 }]),
  );

/** The steps of an order of work that a planned screw may be put in at. */
function stepsFor({ steps }: Procedure, { zone, screw, recipe }: Planned): readonly number[] {
  return steps.flatMap(({ fills }, index) =>
    fills?.zone === zone && fills.screw === screw && fills.recipe === recipe ? [index] : [],
  );
}

/** A plan puts its screws in in the order of the work that it names. */
export const planFollowsItsOrderOfWork: Rule = {
  id: "plan-follows-its-order-of-work",
  severity: "sign",
  about: "case",
  summary:
    "Of the screws that a case's order of work speaks of, none is planned after one that comes later there.",
  why: "Two cards in one theatre that say different orders make people stop, or follow the wrong one; a neutral screw put in too early keeps the plate from sliding under the loaded one.",
  fix: "Plan in the order of work, or sign that the surgeon wants another.",
  source: "common practice",
  *check({ catalogue }) {
    for (const { file, plan, procedure } of catalogue.cases.values()) {
      if (procedure === undefined) continue;
      const work = known(catalogue.procedures, procedure);
      let [from, before] = [0, ""];
      for (const planned of [...plan].sort((a, b) => a.order - b.order)) {
        const steps = stepsFor(work, planned);
        const step = steps.find((index) => index >= from);
        if (step !== undefined) {
          from = work.steps[step]?.fills?.repeat === "one" ? step + 1 : step;
          before = planned.hole;
        } else if (steps.length > 0)
          yield {
            file,
            path: ["plan", plan.indexOf(planned), "order"],
            message: `Expected ${planned.hole} before ${before}, as in ${work.name}, got it after`,
          };
      }
    }
  },
  examples: [
    passes("in the order of work", "Plain-head screw, then locking, as the order of work has it.", {
      ...asked,
      ...planned(neutral, locking),
    }),
    passes("no order of work named", "Locking first, and the case names no order of work.", {
      ...planned(locking, neutral),
    }),
    passes("a screw that the order of work does not speak of", "It may be put in at any time.", {
      ...asked,
      ...planned(locking, { ...neutral, recipe: "cortical-compression" }),
    }),
    fails("against the order of work", "Locking first, though the order of work ends with it.", {
      ...asked,
      ...planned(locking, neutral),
    }),
  ],
};
