import { known } from "../model/catalogue.ts";
import type { Chain } from "../model/chain.ts";
import { exchangeables } from "../model/exchange.ts";
import type { StepParts } from "../model/figure.ts";
import type { ProcedureStep } from "../model/recipe.ts";
import type { StepView } from "../model/sheet.ts";
import { linkOf } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";
import { frames } from "./frame.ts";
import { type Hand, handOf } from "./hand-words.ts";
import { drawnPlate } from "./plate-facts.ts";
import { capital, listed, spoken } from "./spoken.ts";
import { cutsWanted } from "./step-cuts.ts";
import { partsAtVerb } from "./step-parts.ts";
import { stepsByFrame, stepView } from "./step-view.ts";
import { unparted } from "./unparted.ts";

function chainOf({ derived }: Composing, step: ProcedureStep): Chain | undefined {
  const { fills } = step;
  return (
    fills &&
    derived.chains.find(
      ({ zone, screw, recipe }) =>
        zone === fills.zone && screw === fills.screw && recipe === fills.recipe,
    )
  );
}

function partsOf(
  composing: Composing,
  procedure: string,
  step: ProcedureStep,
  chain: Chain | undefined,
): StepParts {
  const { catalogue } = composing;
  const { families } = known(catalogue.procedures, procedure);
  const plate = [...catalogue.plates.keys()]
    .map((id) => drawnPlate(catalogue, id))
    .find(({ family }) => families.includes(family));
  const own =
    plate === undefined
      ? {}
      : { plateThickness: plate.thickness.shaft, ...(plate.hooks ? { hooks: plate.hooks } : {}) };
  return chain === undefined ? own : { ...partsAtVerb(composing, chain, step.verb), ...own };
}

/** The most locking screws that a plate of the procedure's families takes: one for each hole with a threaded part. */
function lockable({ catalogue, derived }: Composing, families: readonly string[]): number {
  const plates = derived.plates.filter(({ plate }) =>
    families.includes(drawnPlate(catalogue, plate).family),
  );
  return Math.max(
    0,
    ...plates.map(
      ({ holes }) =>
        holes.filter(({ zones }) => zones.some(({ kind }) => kind === "threaded")).length,
    ),
  );
}

/** What is called out for a chain, its technique with it: "Screw 3.5 cortical, offset, for compression". */
function calledFor({ catalogue }: Composing, { screw, recipe }: Chain): string {
  const { phrase } = known(catalogue.recipes, recipe);
  return [known(catalogue.screws, screw).called, ...(phrase ? [phrase] : [])].join(", ");
}

/** With what each size of locking screw is tightened again: "driver 10, limiter 0.9 N·m: screw 2.7 locking", small screws first. */
function limitersOf({ catalogue }: Composing, chains: readonly Chain[]): string {
  const limited = chains.filter((chain) => linkOf(chain, "limiter")?.instrument !== undefined);
  const lines = limited.map((chain) => {
    const tools = (["driver", "limiter"] as const).flatMap((role) => {
      const id = linkOf(chain, role)?.instrument;
      return id === undefined ? [] : [spoken(known(catalogue.instruments, id))];
    });
    const { called, major } = known(catalogue.screws, chain.screw);
    return { major, words: `${capital(called)}: ${tools.join(", ")}` };
  });
  const sorted = lines.sort((a, b) => a.major - b.major).map(({ words }) => words);
  return [...new Set(sorted)].join("; ");
}

/** What goes with the screw of the first of some steps, or of the next that has one where this one exchanges instruments. */
function handedAt(
  composing: Composing,
  hand: Hand,
  [step, ...later]: readonly ProcedureStep[],
): string {
  if (step === undefined) return "";
  const changes = step.changes.length > 0;
  const next = changes ? later.find(({ fills }) => fills) : undefined;
  const chain = chainOf(composing, step.fills ? step : (next ?? step));
  if (chain === undefined) return "";
  const named = exchangeables.filter((part) => step.changes.includes(part));
  return `${changes ? `Change ${listed(named)}: ` : ""}${hand.words(chain)}`;
}

/** The step card of one procedure: a whole plate's order of work. */
export function procedureSheets(composing: Composing, procedure: string): readonly StepView[] {
  const { catalogue, pictures } = composing;
  const facts = known(catalogue.procedures, procedure);
  const id = procedure.startsWith(`${facts.system}-`)
    ? procedure
    : `${facts.system}-procedure-${procedure}`;
  const most = lockable(composing, facts.families);
  const chains = facts.steps.flatMap((step) => chainOf(composing, step) ?? []);
  const cuts = cutsWanted(composing, chains);
  const hand = handOf(composing, chains);
  const subject =
    facts.goes_on_with === undefined
      ? "Order of work"
      : `Order of work; goes on with: ${known(catalogue.procedures, facts.goes_on_with).name}`;
  const steps = stepsByFrame(composing, subject, cuts, (size) =>
    facts.steps.map((step, index) => {
      const chain = chainOf(composing, step);
      const parts = partsOf(composing, procedure, step, chain);
      const { interfaces } = catalogue;
      const frame = pictures.step(`${id}-s${index + 1}`, step.verb, parts, interfaces, size);
      const inHand = chain === undefined ? "" : unparted(calledFor(composing, chain));
      const handedWith = unparted(
        step.verb === "final-pass"
          ? limitersOf(composing, chains)
          : handedAt(composing, hand, facts.steps.slice(index)),
      );
      const view = stepView(composing, step, index, { frame, inHand, handedWith });
      return step.tally === "locking-screws"
        ? { ...view, tally: Array.from({ length: most }, (_, box) => String(box + 1)) }
        : view;
    }),
  );
  const atSteps = new Set(facts.steps.flatMap(({ cautions }) => cautions));
  const about = {
    id,
    system: facts.system,
    title: facts.name,
    lead: "The surgeon may change this order.",
    cautions: [...facts.cautions, ...facts.required_cautions].filter(
      (caution) => !atSteps.has(caution),
    ),
    origin: facts.file,
    kind: "steps" as const,
    shows: [
      `procedure/${procedure}`,
      ...chains.map(({ id }) => `chain/${id}`),
      ...facts.steps.flatMap(({ cautions }) => cautions.map((caution) => `caution/${caution}`)),
    ],
    trueSize: false,
  };
  return frames(composing, about).map((frame) => {
    const whole = { ...frame, everyScrew: hand.everyScrew };
    return { ...whole, kind: "steps", ...steps(whole) } satisfies StepView;
  });
}
