import { known } from "../../model/catalogue.ts";
import type { ProcedureStep, RecipeStep } from "../../model/recipe.ts";
import type { Block } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

function notesOf({ catalogue }: SiteInput, step: ProcedureStep | RecipeStep): readonly string[] {
  const by = step.skip?.by === "surgeon" ? "the surgeon" : "instructions for use or local protocol";
  return [
    ...(step.decides ? ["The surgeon decides."] : []),
    ...(step.skip ? [`Left out when: ${step.skip.when} Decided by ${by}.`] : []),
    ...step.cautions.map((id) => {
      const { signal, text } = known(catalogue.cautions, id);
      return `${signal}: ${text}`;
    }),
  ];
}

/** The steps of a technique or procedure in words, each with its cautions, and the cautions of the whole. */
export function stepBlocks(
  input: SiteInput,
  whole: {
    readonly steps: readonly (ProcedureStep | RecipeStep)[];
    readonly cautions: readonly string[];
    readonly required_cautions: readonly string[];
  },
): readonly Block[] {
  const { catalogue } = input;
  const atSteps = new Set(whole.steps.flatMap(({ cautions }) => cautions));
  const general = [...new Set([...whole.cautions, ...whole.required_cautions])]
    .filter((id) => !atSteps.has(id))
    .map((id) => known(catalogue.cautions, id));
  return [
    { kind: "heading", text: "Steps", id: "steps" },
    {
      kind: "steps",
      steps: whole.steps.map((step) => ({ say: step.say, notes: notesOf(input, step) })),
    },
    ...(general.length > 0
      ? [
          { kind: "heading", text: "Cautions for the whole", id: "cautions" } as const,
          {
            kind: "links",
            links: general.map(({ signal, text }) => ({ text: `${signal}: ${text}` })),
          } as const,
        ]
      : []),
  ];
}
