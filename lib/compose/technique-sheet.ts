import { known } from "../model/catalogue.ts";
import { citedDocuments } from "../model/cited-documents.ts";
import type { StepView } from "../model/sheet.ts";
import { type ChainGroup, chainGroups } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";
import { frames } from "./frame.ts";
import { grouped } from "./grouped.ts";
import { capital, listed } from "./spoken.ts";
import { cutsWanted } from "./step-cuts.ts";
import { stepParts } from "./step-parts.ts";
import { inHandOf, needsTap, stepsByFrame, stepView } from "./step-view.ts";

function sheets(
  composing: Composing,
  system: string,
  group: ChainGroup,
  id: string,
): readonly StepView[] {
  const { catalogue, pictures } = composing;
  const [chain] = group.chains;
  const recipe = known(catalogue.recipes, chain.recipe);
  const { called } = known(catalogue.screws, chain.screw);
  const steps = stepsByFrame(
    composing,
    capital(recipe.name),
    cutsWanted(composing, group.chains),
    (size) =>
      recipe.steps.map((step, index) => {
        const parts = stepParts(composing, chain, index);
        const { interfaces } = catalogue;
        const frame = pictures.step(`${id}-s${index + 1}`, step.verb, parts, interfaces, size);
        const inHand = inHandOf(composing, chain, step);
        const needed = needsTap(chain, step);
        return stepView(composing, step, index, { frame, inHand, handedWith: "", needed });
      }),
  );
  const atSteps = new Set(recipe.steps.flatMap(({ cautions }) => cautions));
  const whole = [...recipe.cautions, ...recipe.required_cautions].filter(
    (caution) => !atSteps.has(caution),
  );
  const holes = [...new Set(group.chains.map(({ zone }) => known(catalogue.zones, zone).name))];
  const facts = {
    id,
    system,
    title: called,
    lead: `Goes in: ${listed(holes, "or")}.`,
    cautions: whole,
    origin: recipe.file,
    kind: "steps" as const,
    shows: [
      ...group.chains.map((one) => `chain/${one.id}`),
      ...recipe.steps.flatMap(({ cautions }) => cautions.map((caution) => `caution/${caution}`)),
    ],
    trueSize: false,
    documents: [
      ...new Set([...known(catalogue.systems, system).documents, ...citedDocuments(recipe.source)]),
    ],
  };
  return frames(composing, facts).map(
    (frame) =>
      ({
        ...frame,
        kind: "steps",
        ...steps(frame),
      }) satisfies StepView,
  );
}

/** Step cards of one system: one for each technique and screw, holes with the same instruments merged. */
export function techniqueSheets(composing: Composing, system: string): readonly StepView[] {
  const chains = composing.derived.chains.filter((chain) => chain.system === system);
  return [...grouped(chains, ({ recipe, screw }) => `${recipe} ${screw}`).values()].flatMap(
    (same) => {
      const groups = chainGroups(composing, same);
      const base = `${system}-steps-${same[0].recipe}-${same[0].screw}`;
      return groups.flatMap((group) =>
        sheets(
          composing,
          system,
          group,
          groups.length === 1 ? base : `${base}-${group.chains[0].zone}`,
        ),
      );
    },
  );
}
