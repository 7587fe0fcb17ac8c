import { known } from "../model/catalogue.ts";
import type { Chain } from "../model/chain.ts";
import type { SheetFrame } from "../model/sheet-frame.ts";
import { enlargement, typeSizes } from "../model/type-sizes.ts";
import { isLag } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";
import { linesOf } from "./printed-lines.ts";
import { sectionParts } from "./section-parts.ts";
import { type SectionsWanted, sectionViews } from "./section-views.ts";
import { capital } from "./spoken.ts";

/** Most cut views side by side, and millimetres between two of them and above them. */
const across = 3;
const [gap, above] = [6, 2.4];
/** Millimetres: heights that cut views are given at least, better ones first; the greatest height, several side by side or one alone; the width and least height of one beside the title. */
export const leastHeights = [36, 30] as const;
const [greatest, greatestAlone] = [46, 60];
const besideTitle = { width: 88, threaded: 27, plain: 30 } as const;
/** Height of a caption's line as a part of its font size. */
const leading = 1.16;
/** Millimetres of a head's height beside which a cut view can stand. */
const headWords = 19;

/** Cut views and where they stand. */
export type Cuts = Pick<SheetFrame, "sections" | "sectionsBeside">;

/** The cut views that chains ask for, each hole and screw once in their order; before the first lag screw its two holes, where a place is left. */
export function cutsWanted(composing: Composing, chains: readonly Chain[]): SectionsWanted {
  const distinct = new Map<string, Chain>();
  for (const chain of chains) {
    const same = `${chain.zone} ${chain.screw} ${isLag(chain)}`;
    if (!distinct.has(same) && sectionParts(composing, chain) !== undefined)
      distinct.set(same, chain);
  }
  const shown = [...distinct.values()];
  const bored = shown.length < across ? shown.find(isLag) : undefined;
  return shown.flatMap(
    (chain): SectionsWanted => [
      ...(chain === bored ? [[chain, "lag-holes"] as const] : []),
      [chain, isLag(chain) ? "lag-seated" : "seated"],
    ],
  );
}

const screwsOf = (wanted: SectionsWanted): number =>
  new Set(wanted.map(([{ screw }]) => screw)).size;

/** What a cut view shows that the card's title does not say. */
function captionOf(
  { catalogue }: Composing,
  [chain, view]: SectionsWanted[number],
  screws: number,
): string {
  const hole = known(catalogue.zones, chain.zone).name;
  if (view === "lag-holes") return `The two holes, ${hole}.`;
  const { called } = known(catalogue.screws, chain.screw);
  return screws > 1 ? `${called} in ${hole}.` : `${capital(hole)}.`;
}

/** Cut views in a size of millimetres, their words as large as the paper allows and never below a note. */
function drawn(
  composing: Composing,
  { id, format }: SheetFrame,
  wanted: SectionsWanted,
  [width, most]: readonly [number, number],
): NonNullable<SheetFrame["sections"]> {
  const wide = enlargement("steps", format);
  const height = Math.min(most, (wanted.length > 1 ? greatest : greatestAlone) * wide);
  const letter = wide * Math.min(4, Math.max(2.7, Math.min(height / wide / 10, width / wide / 22)));
  return sectionViews(composing, id, wanted, { width, height, letter });
}

/** Millimetres that the captions of cut views take beneath them in columns of a width; none for no words. */
function captionHeight(
  { pictures }: Composing,
  { format }: SheetFrame,
  captions: readonly string[],
  width: number,
): number {
  const size = typeSizes("steps", format).note;
  const lines = captions.map((text) =>
    text === "" ? 0 : linesOf(pictures, [{ text, weight: 600 }], { width, size }),
  );
  return Math.max(0, ...lines) * size * leading;
}

/** Cut views side by side under the steps, where `room` millimetres leave them the least height. */
export function cutsUnder(
  composing: Composing,
  wanted: SectionsWanted,
  page: SheetFrame,
  room: number,
  least: number,
): Cuts | undefined {
  const { width, margin } = page.format;
  const shown = wanted.slice(0, across);
  const column = (width - 2 * margin - (shown.length - 1) * gap) / shown.length;
  const words = shown.map((one) => captionOf(composing, one, screwsOf(wanted)));
  const height = room - above - captionHeight(composing, page, words, column);
  if (shown.length === 0 || height < least * enlargement("steps", page.format)) return undefined;
  const cuts = drawn(composing, page, shown, [column, height]);
  return { sections: cuts.map((cut, index) => ({ ...cut, words: words[index] ?? "" })) };
}

/** The first seated screw of a card, cut beside the card's title, where `room` millimetres are enough for it; named where the card has other screws too. */
export function cutBeside(
  composing: Composing,
  wanted: SectionsWanted,
  page: SheetFrame,
  room: number,
): Cuts | undefined {
  const wide = enlargement("steps", page.format);
  const width = besideTitle.width * wide;
  const first = wanted.find(([, view]) => view !== "lag-holes");
  if (first === undefined) return undefined;
  const screws = screwsOf(wanted);
  const words = screws > 1 ? captionOf(composing, first, screws) : "";
  const height = room + headWords * wide - captionHeight(composing, page, [words], width);
  const { kind } = known(composing.catalogue.zones, first[0].zone);
  const least = kind === "threaded" ? besideTitle.threaded : besideTitle.plain;
  if (height < least * wide) return undefined;
  const [cut] = drawn(composing, page, [first], [width, height]);
  return cut && { sections: [{ ...cut, words }], sectionsBeside: true };
}
