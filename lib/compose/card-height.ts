import type { Pictures } from "../model/figure.ts";
import type { StepView } from "../model/sheet.ts";
import type { SheetFrame } from "../model/sheet-frame.ts";
import { type TypeSizes, typeSizes } from "../model/type-sizes.ts";
import type { Composing } from "./composing.ts";
import { notesHeight } from "./notes-height.ts";
import { linesOf, type Run } from "./printed-lines.ts";

type Step = StepView["steps"][number];
type Told = Pick<Composing, "pictures">;

/** Heights of lines as parts of their font sizes, as sheet.css sets them. */
const leading = { title: 1.05, called: 1.05, body: 1.1, subject: 1.16, note: 1.22 } as const;
/** Millimetres: gaps and rules between banner, head, steps, cautions and foot; the widest logo, the square code, and the gaps beside them. */
const around = 10.4;
const beside = { logo: 34, code: 13, gap: 5 } as const;
/** Millimetres between what serves every screw and the first step. */
const aroundEvery = 2;
/** Millimetres: a step's number with the gaps in its row, its padding and rule, a caution's rule, a box to tick with the gap after it. */
const besideWords = 13;
const aroundRow = 1.4;
const cautionRule = 2.3;
const tick = { wide: 7.5, high: 7 } as const;
/** Millimetres between a verb and what is called out beside it, and what frames "Surgeon decides". */
const betweenWords = 4;
const decidesBox = 3.8;

const linesIn = (pictures: Pictures, runs: readonly Run[], width: number, size: number): number =>
  runs.every(({ text }) => text === "") ? 0 : linesOf(pictures, runs, { width, size });

/** Millimetres of a step card's height that its steps and cut views share. */
export function cardRoom(composing: Composing, subject: string, page: SheetFrame): number {
  const { pictures } = composing;
  const { width, height, margin } = page.format;
  const sizes = typeSizes("steps", page.format);
  const wide = width - 2 * margin;
  const { card, issue, date, trayRevision, reviewBy, distance, language, sources } = page.identity;
  const identity = [card, issue, date, trayRevision, reviewBy, page.identity.page, distance];
  const words = wide - beside.logo - beside.code - 2 * beside.gap;
  const feet = [
    `${page.defer} ${page.ask}`,
    `${[...identity, language].map((one) => one.replaceAll(" ", "_")).join(" · ")} · 00000000`,
    sources,
  ].reduce((sum, text) => sum + linesIn(pictures, [{ text }], words, sizes.note), 0);
  const title = linesIn(pictures, [{ text: page.title, weight: 700 }], wide, sizes.title);
  const every = linesIn(pictures, [{ text: page.everyScrew ?? "" }], wide, sizes.body);
  const under = linesIn(pictures, [{ text: subject, weight: 600 }], wide, sizes.body);
  return (
    height -
    2 * margin -
    around -
    title * sizes.title * leading.title -
    under * sizes.body * leading.subject -
    (every > 0 ? every * sizes.body * leading.subject + aroundEvery : 0) -
    (1 + feet) * sizes.note * leading.note -
    notesHeight(composing, "steps", page)
  );
}

function headHeight(
  pictures: Pictures,
  { verb, decides, inHand, handedWith, tally }: Step,
  width: number,
  sizes: TypeSizes,
): number {
  const box = decides === "" ? 0 : pictures.textWidth(decides, sizes.note, 700) + decidesBox;
  const left = pictures.textWidth(`${verb} `, sizes.body, 700) + box;
  const called = pictures.textWidth(inHand, sizes.called, 700);
  const line = sizes.called * leading.called;
  const parts = linesIn(pictures, [{ text: handedWith }], width, sizes.body);
  const with_ = parts * sizes.body * leading.body;
  const ticks = Math.ceil((tally.length * tick.wide) / width) * tick.high;
  const beside = inHand === "" && left + betweenWords + tally.length * tick.wide <= width;
  if (beside) return Math.max(sizes.body * leading.body, ticks) + with_;
  if (inHand === "") return sizes.body * leading.body + ticks + with_;
  if (left + betweenWords + called <= width) return line + ticks + with_;
  const lines = linesIn(pictures, [{ text: inHand, weight: 700 }], width, sizes.called);
  return sizes.body * leading.body + lines * line + ticks + with_;
}

/** Millimetres that one step takes of a card: its frame, or its words where they are higher. */
export function stepHeight({ pictures }: Told, step: Step, { format }: SheetFrame): number {
  const sizes = typeSizes("steps", format);
  const width = format.width - 2 * format.margin - besideWords - step.frame.width;
  const body = (runs: readonly Run[], room: number): number =>
    linesIn(pictures, runs, room, sizes.body) * sizes.body * leading.body;
  const warned = step.cautions.reduce(
    (sum, { signal, text }) =>
      sum + body([{ text: signal, weight: 700 }, { text }], width - cautionRule) + 0.5,
    0,
  );
  const words =
    headHeight(pictures, step, width, sizes) +
    body([{ text: step.say }], width) +
    body([{ text: step.skip }], width) +
    linesIn(pictures, [{ text: step.aside }], width, sizes.note) * sizes.note * leading.note +
    warned;
  return Math.max(step.frame.height, words) + aroundRow;
}
