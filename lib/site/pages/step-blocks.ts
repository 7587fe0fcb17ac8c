import { known } from "../../model/catalogue.ts";
import type { ProcedureStep, RecipeStep } from "../../model/recipe.ts";
import type { CautionView } from "../../model/sheet-frame.ts";
import type { Block } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

type Step = ProcedureStep | RecipeStep;

function notesOf({ decides, skip }: Step): readonly string[] {
  const by = skip?.by === "surgeon" ? "the surgeon" : "instructions for use or local protocol";
  return [
    ...(decides ? ["The surgeon decides."] : []),
    ...(skip ? [`Left out when: ${skip.when} Decided by ${by}.`] : []),
  ];
}

/** The steps of a technique or procedure in words, each with its cautions, and the cautions of the whole. */
export function stepBlocks(
  { catalogue }: SiteInput,
  whole: {
    readonly steps: readonly Step[];
    readonly cautions: readonly string[];
    readonly required_cautions: readonly string[];
  },
): readonly Block[] {
  const caution = (id: string): CautionView => {
    const { signal, text } = known(catalogue.cautions, id);
    return { id, signal, text };
  };
  const atSteps = new Set(whole.steps.flatMap(({ cautions }) => cautions));
  const general = [...new Set([...whole.cautions, ...whole.required_cautions])].filter(
    (id) => !atSteps.has(id),
  );
  return [
    { kind: "heading", text: "Steps", id: "steps" },
    {
      kind: "steps",
      steps: whole.steps.map((step) => ({
        say: step.say,
        notes: notesOf(step),
        cautions: step.cautions.map(caution),
      })),
    },
    ...(general.length > 0
      ? [
          { kind: "heading", text: "Cautions for the whole", id: "cautions" } as const,
          { kind: "cautions", cautions: general.map(caution) } as const,
        ]
      : []),
  ];
}
