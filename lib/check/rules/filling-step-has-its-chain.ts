import { known } from "../../model/catalogue.ts";
import type { Verb } from "../../model/recipe.ts";
import type { Breach, Rule, RuleInput } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { fillings } from "../procedure-fills.ts";

const drives = new Set<Verb>(["drive-screw", "watch-gap", "tighten-by-hand", "tighten-to-limit"]);
const steps = "procedure/lower-fibula steps";

/** Steps that drive screws without saying which. */
function* unsaid({ catalogue }: RuleInput): Generator<Breach> {
  for (const { file, steps: all } of catalogue.procedures.values())
    for (const [index, { id, verb, fills }] of all.entries())
      if (drives.has(verb) && fills === undefined)
        yield {
          file,
          path: ["steps", index],
          message: `Missing which holes step "${id}" fills (fills)`,
        };
}

/** A step that drives screws says which, and they are permitted there by that technique. */
export const fillingStepHasItsChain: Rule = {
  id: "filling-step-has-its-chain",
  severity: "stop",
  about: "technique",
  summary:
    "A step of a procedure that drives screws names a screw its hole permits and a technique that suits both; its verb is one of that technique.",
  why: "Without a chain the step has no drill, guide or driver beside it, and nobody is told what to hand over.",
  fix: "Choose a screw the hole permits and a technique for this kind of hole and screw, or correct the step's verb.",
  source: "common practice",
  *check(input) {
    const { catalogue, derived } = input;
    yield* unsaid(input);
    const closed = new Set(
      [...derived.chains, ...derived.gaps].map((one) => `${one.zone} ${one.screw} ${one.recipe}`),
    );
    for (const { procedure, step, index, fills } of fillings(catalogue)) {
      const { file } = procedure;
      const recipe = known(catalogue.recipes, fills.recipe);
      const { called } = known(catalogue.screws, fills.screw);
      if (!closed.has(`${fills.zone} ${fills.screw} ${fills.recipe}`))
        yield {
          file,
          path: ["steps", index, "fills"],
          message: `Expected a chain for ${called} in ${known(catalogue.zones, fills.zone).name} by ${recipe.name}, got none`,
        };
      else if (!recipe.steps.some(({ verb }) => drives.has(verb) && verb === step.verb))
        yield {
          file,
          path: ["steps", index, "verb"],
          message: `Expected step "${step.id}" to drive or tighten as ${recipe.name} does, got ${step.verb}`,
        };
    }
  },
  examples: [
    passes("a permitted screw by its technique", "Cortical 3.5 in oblong 3.5, neutral."),
    fails("a screw the hole does not permit", "Locking 3.5 in oblong 3.5.", {
      [`${steps}.1.fills.screw`]: "locking-35",
    }),
    fails("a technique for another hole", "Cortical 3.5 in oblong 3.5 through the sleeve.", {
      [`${steps}.1.fills.recipe`]: "locking-through-sleeve",
    }),
    fails("a screw driven, none named", "The step drives a screw and fills nothing.", {
      [`${steps}.1.fills`]: undefined,
    }),
    fails("a verb of another technique", "A neutral screw is tightened to a limit.", {
      [`${steps}.1.verb`]: "tighten-to-limit",
    }),
  ],
};
