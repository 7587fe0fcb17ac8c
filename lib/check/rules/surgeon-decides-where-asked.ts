import { type Catalogue, known } from "../../model/catalogue.ts";
import type { ProcedureStep, Recipe, RecipeStep, Verb } from "../../model/recipe.ts";
import type { Breach, Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";
import { keptOtherwise } from "../kept-otherwise.ts";

const byFeel = new Set<Verb>(["tighten-by-hand", "watch-gap"]);
const words = /\bthe surgeon (decides|says|asks|chooses)\b|\bif planned\b/i;
const saysSo = ({ say, skip }: RecipeStep | ProcedureStep): boolean =>
  words.test(say) && skip?.by !== "surgeon";

/** Why a step of a technique is the surgeon's to decide; undefined where it need not be. */
function inTechnique(step: RecipeStep): string | undefined {
  const { verb } = step;
  if (verb === "confirm") return "it is a confirmation";
  if (byFeel.has(verb)) return "how far a plain-head screw is tightened is nobody else's to say";
  return saysSo(step) ? "its words say so" : undefined;
}

/** The same for a step of a whole plate's order of work. */
function inProcedure({ recipes }: Catalogue, step: ProcedureStep): string | undefined {
  const { verb, hands, cautions, changes, fills } = step;
  const recipe: Recipe | undefined = fills && known(recipes, fills.recipe);
  if (hands === "surgeon") return "it is in the surgeon's hands";
  if (verb === "confirm" && cautions.length === 0 && changes.length === 0)
    return "it is a confirmation of nothing that is read or exchanged";
  if (recipe && (recipe.needs.length > 0 || !recipe.default))
    return "its technique is used only where it is asked for";
  if (recipe?.steps.some(({ verb: act, decides }) => act.startsWith("drill") && decides))
    return "how deep is drilled is the surgeon's to decide";
  return saysSo(step) ? "its words say so" : undefined;
}

/** Where the surgeon decides, the step is marked so. */
export const surgeonDecidesWhereAsked: Rule = {
  id: "surgeon-decides-where-asked",
  severity: "stop",
  about: "technique",
  summary:
    "Marked as the surgeon's are: confirmations of a technique, tightening a plain-head screw, screws by a technique that is asked for, and every step whose words say so.",
  why: "A step without the mark reads as an order, given by a card to the one who decides.",
  fix: "Add decides: surgeon to the step.",
  source: "common practice",
  *check({ catalogue }) {
    const { recipes, procedures } = catalogue;
    const asked = [
      ...[...recipes.values()].map((one) => [one, one.steps.map(inTechnique)] as const),
      ...[...procedures.values()].map(
        (one) => [one, one.steps.map((step) => inProcedure(catalogue, step))] as const,
      ),
    ];
    for (const [technique, whys] of asked)
      for (const [index, { id, decides }] of technique.steps.entries()) {
        const why = whys[index];
        if (why === undefined || decides === "surgeon") continue;
        yield {
          file: technique.file,
          path: ["steps", index],
          severity: keptOtherwise(catalogue, technique),
          message: `Missing that the surgeon decides at step "${id}": ${why}`,
        } satisfies Breach;
      }
  },
  examples: [
    passes("marked", "By hand, and the surgeon decides."),
    fails("tightened by nobody's decision", "By hand, and no mark.", {
      "recipe/cortical-neutral steps.6.decides": undefined,
    }),
    fails("a confirmation by nobody", "All plain-head screws are in: who says so?", {
      "recipe/locking-through-sleeve steps.0.decides": undefined,
    }),
    fails("words without the mark", "It says that the surgeon decides how deep.", {
      "recipe/cortical-neutral steps.1.say": "Drill; the surgeon decides how deep.",
    }),
    fails("a loaded screw as a matter of course", "The step fills by compression, and no mark.", {
      "procedure/lower-fibula steps.1.fills.recipe": "cortical-compression",
    }),
    fails("a look at the image by nobody", "Verb confirm, no caution, nothing exchanged.", {
      "procedure/lower-fibula steps.0.verb": "confirm",
      "procedure/lower-fibula steps.0.cautions": [],
    }),
  ],
};
