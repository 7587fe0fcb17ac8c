import { known } from "../model/catalogue.ts";
import type { Chain } from "../model/chain.ts";
import type { Figure } from "../model/figure.ts";
import type { ProcedureStep, Query, RecipeStep } from "../model/recipe.ts";
import type { StepView } from "../model/sheet.ts";
import type { SheetFrame } from "../model/sheet-frame.ts";
import { cardRoom, stepHeight } from "./card-height.ts";
import { linkFor, linkOf } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";
import { cautionViews } from "./frame.ts";
import type { SectionsWanted } from "./section-views.ts";
import { spoken, tellTale } from "./spoken.ts";
import { type Cuts, cutBeside, cutsUnder, leastHeights } from "./step-cuts.ts";
import { verbWords } from "./verb-words.ts";

/** Drawn frames in millimetres, largest first. */
const frameSizes = [
  { width: 54, height: 30 },
  { width: 42, height: 22 },
  { width: 36, height: 18 },
] as const;
type Steps = StepView["steps"];
type FrameSize = (typeof frameSizes)[number];
/** Millimetres that stay free where heights are reckoned before printing. */
const slack = 1;

/** What a step card shows on a page: its steps drawn in the largest frames with which they and the cut views fit, else without the cut views; each size is drawn once. */
export function stepsByFrame(
  composing: Composing,
  subject: string,
  wanted: SectionsWanted,
  drawn: (size: FrameSize) => Steps,
): (page: SheetFrame) => Pick<StepView, "subject" | "steps"> & Cuts {
  const kept = new Map<FrameSize, Steps>();
  const stepsIn = (size: FrameSize): Steps => {
    const steps = kept.get(size) ?? drawn(size);
    kept.set(size, steps);
    return steps;
  };
  return (page) => {
    const room = cardRoom(composing, subject, page) - slack;
    const tried = frameSizes.map((size) => {
      const steps = stepsIn(size);
      const taken = steps.reduce((sum, step) => sum + stepHeight(composing, step, page), 0);
      return { steps, left: room - taken };
    });
    for (const least of [...leastHeights, undefined])
      for (const { steps, left } of tried) {
        const cuts =
          least === undefined
            ? cutBeside(composing, wanted, page, left)
            : cutsUnder(composing, wanted, page, left, least);
        if (cuts !== undefined) return { subject, steps, ...cuts };
      }
    const fits = tried.find(({ left }) => left >= 0) ?? tried.at(-1);
    return { subject, steps: fits?.steps ?? [] };
  };
}

/** Boxes to tick where something is counted. */
const boxes: Readonly<Record<NonNullable<RecipeStep["tally"]>, readonly string[]>> = {
  "locking-screws": ["1", "2", "3", "4", "5", "6", "7", "8"],
  wires: ["1", "2", "3"],
};

function answer({ catalogue }: Composing, chain: Chain, query: Query): readonly string[] {
  const link = linkFor(chain, query);
  if (link === undefined) return [];
  if (link.instrument === undefined) return [`no ${query.kind} in this tray`];
  const instrument = known(catalogue.instruments, link.instrument);
  const end = instrument.kind === "plain-guide" ? tellTale(instrument, link.end) : "";
  return [`${spoken(instrument)}${end === "" ? "" : `, ${end}`}`];
}

/** What lies in the hand at a step of a technique: the answers to its queries, and the screw where one is driven. */
export function inHandOf(composing: Composing, chain: Chain, step: RecipeStep): string {
  const asked = [...(step.uses ? [step.uses] : []), ...step.also];
  const tools = asked.flatMap((query) => answer(composing, chain, query));
  const screw =
    step.verb === "drive-screw" ? [known(composing.catalogue.screws, chain.screw).called] : [];
  return [...screw, ...tools].join(" + ");
}

/** When a step is left out, in words, by who decides it; nothing where it never is. `needed` where it is done unless the surgeon says otherwise. */
function leftOut(
  { skip }: RecipeStep | ProcedureStep,
  needed: boolean,
): Pick<StepView["steps"][number], "skip" | "aside"> {
  if (skip === undefined) return { skip: "", aside: "" };
  if (needed) return { skip: "Left out only if the surgeon says so.", aside: "" };
  const when = skip.when.replace(/\.$/, "").replace(/^./u, (first) => first.toLowerCase());
  return skip.by === "surgeon"
    ? { skip: `Only if the surgeon asks: ${when}.`, aside: "" }
    : { skip: "", aside: `Left out where ${when}: instructions for use or local protocol decide.` };
}

/** Whether a step hands a tap that its screw cannot do without. */
export const needsTap = (chain: Chain, { verb }: RecipeStep): boolean =>
  verb === "tap" && linkOf(chain, "tap")?.required === true;

/** A step as printed; `frame` is its drawing, `inHand` what is called out and `handedWith` what goes with it; `needed` where it is done unless the surgeon says otherwise. */
export function stepView(
  composing: Composing,
  step: RecipeStep | ProcedureStep,
  index: number,
  {
    needed = false,
    ...drawn
  }: {
    readonly frame: Figure;
    readonly inHand: string;
    readonly handedWith: string;
    readonly needed?: boolean;
  },
): StepView["steps"][number] {
  return {
    number: String(index + 1),
    verb: verbWords[step.verb],
    say: step.say,
    ...drawn,
    decides: step.decides === undefined ? "" : "Surgeon decides",
    ...leftOut(step, needed),
    cautions: cautionViews(composing, step.cautions),
    tally: step.tally === undefined ? [] : boxes[step.tally],
  };
}
