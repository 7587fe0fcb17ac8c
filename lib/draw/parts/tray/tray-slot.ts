import type { TrayMapSlot } from "../../../model/figure.ts";
import type { Interfaces } from "../../../model/interfaces.ts";
import type { Pen } from "../../canvas.ts";
import { edges, gaps } from "../../tokens.ts";
import { drawLookAlikeStrip, stripWidth } from "./look-alike-strip.ts";
import { eachWords, rackText, shortRackText } from "./rack-text.ts";
import {
  layOutSlot,
  overfull,
  type Shown,
  type SlotLayout,
  type SlotRoom,
  type Wording,
} from "./slot-layout.ts";
import { type SlotPicture, slotPicture } from "./slot-picture.ts";
import { drawText, type RowPart, setLines, setRow, stacked, type TextBlock } from "./slot-text.ts";

/** Between a slot's outline and what stands in it, mm: at its sides, above and below. */
const [beside, above] = [1.2, 0.9];

/** What stands in a slot, laid out. */
export type PlacedSlot = {
  readonly slot: TrayMapSlot;
  readonly size: { readonly width: number; readonly height: number };
  readonly left: number;
  readonly picture?: SlotPicture;
  readonly layout: SlotLayout;
  /** How much of what may stand there does not: 0 for nothing. */
  readonly lacks: number;
};

type Size = PlacedSlot["size"];

/** What lays a slot out in any height: the least height, up to `most` mm, in which nothing is lacking, its picture beside its words or `under` them; and what stands in it at a size (mm). */
export type SlotLayer = {
  need(most: number, under: boolean): number;
  place(size: Size): PlacedSlot;
};

/** A finer difference of height is not sought, mm. */
const fine = 0.05;

/** Lays out a slot with type of the given sizes: name, mark, pieces, words, what lies in it at the tray's scale, and its look-alike.
 * A slot higher than wide in its tray is `upright`. */
export function slotLayer(
  slot: TrayMapSlot,
  interfaces: Interfaces,
  {
    width,
    upright,
    scale,
  }: { readonly width: number; readonly upright: boolean; readonly scale: number },
  type: SlotType,
): SlotLayer {
  const strip = slot.looksLike === undefined ? 0 : stripWidth;
  const left = beside + strip + (strip > 0 ? gaps.touching : 0);
  const spare = [left - strip - edges.slot, beside - edges.slot] as const;
  const picture = slotPicture(slot, interfaces, scale);
  const { told, short, least } = wordings(slot, type);
  const words = { told: told.map(setOnce), short: short.map(setOnce), least: setOnce(least) };
  const lay = (height: number): Placed =>
    layOut(
      { width: width - left - beside, height: height - 2 * above, upright, spare },
      words,
      picture,
    );
  return {
    need(most, under) {
      let [low, high] = [0, most];
      while (high - low > fine) {
        const middle = (low + high) / 2;
        if (isWhole(lay(middle), under)) high = middle;
        else low = middle;
      }
      return high;
    },
    place: (size) => ({
      slot,
      size,
      left,
      ...(picture ? { picture } : {}),
      ...lay(size.height),
    }),
  };
}

/** Draws a slot that was laid out, its corner at the origin. */
export function drawSlot(pen: Pen, { slot, size, left, picture, layout }: PlacedSlot): void {
  pen.box([0, 0], size.width, size.height, { fill: "metal", stroke: "line" }, 0.8);
  if (slot.looksLike !== undefined) drawLookAlikeStrip(pen, size.height);
  const { over, text, textAt } = layout;
  const data: Readonly<Record<string, string | number>> =
    over === undefined
      ? {}
      : { over: `the words of slot ${slot.slot}`, by: Math.ceil(over * 10) / 10 };
  pen.group("slot-words", { at: [left + textAt[0], above + textAt[1]], data }, (inner) =>
    drawText(inner, text),
  );
  if (picture === undefined || layout.picture === undefined) return;
  const { at, length, upright } = layout.picture;
  const turn = upright ? { turn: 90 } : {};
  pen.group("slot-picture", { at: [left + at[0], above + at[1]], ...turn }, (inner) =>
    picture.draw(inner, length),
  );
}

/** Font sizes in a slot, mm: its mark, its words and number of pieces, a rack's lengths, and all else. */
export type SlotType = {
  readonly mark: number;
  readonly words: number;
  readonly lengths: number;
  readonly note: number;
};

type Placed = Pick<PlacedSlot, "layout" | "lacks">;

const isWhole = ({ lacks, layout }: Placed, under: boolean): boolean =>
  lacks === 0 && (!under || layout.picture?.beside !== true);

/** The picture with as many of the words that tell a look-alike as fit; then a picture broken off, the words alone, the
 * mark with the picture, and words that run over. */
function layOut(
  room: SlotRoom,
  { told, short, least }: Wordings,
  picture: SlotPicture | undefined,
): Placed {
  const shown = (broken: Shown["broken"]) => picture && { picture, broken };
  const tries: readonly (() => SlotLayout | undefined)[] = [
    () => layOutSlot(room, told, shown("where longer")),
    () => layOutSlot(room, [...told, ...short], shown("where needed")),
    () => layOutSlot(room, told, undefined),
    () => layOutSlot(room, short, undefined),
    () => layOutSlot(room, [least], shown("where needed")),
  ];
  for (const [lacks, lay] of tries.entries()) {
    const layout = lay();
    if (layout !== undefined) return { layout, lacks };
  }
  const layout = overfull(room, least);
  return { layout, lacks: tries.length + (layout.over ?? 0) };
}

/** A slot's name, mark and pieces. */
const head = (slot: TrayMapSlot, { mark, words, note }: SlotType): readonly RowPart[] => [
  { text: slot.slot, size: note, weight: 600, colour: "accent" },
  { text: slot.mark, size: mark, weight: 700 },
  { text: slot.quantity, size: words, weight: 600 },
];

type Wordings = {
  readonly told: readonly Wording[];
  readonly short: readonly Wording[];
  readonly least: Wording;
};

/** The same words, set once for each width. */
function setOnce(wording: Wording): Wording {
  const known = new Map<number, TextBlock>();
  return (width) => {
    const block = known.get(width) ?? wording(width);
    known.set(width, block);
    return block;
  };
}

/** Words that say what tells a look-alike, then only its name, then only that there is one; a rack's lengths set smaller and its pieces said once; the mark alone. */
function wordings(slot: TrayMapSlot, type: SlotType): Wordings {
  const { rack, looksLike } = slot;
  const { words, note } = type;
  const kind: RowPart = { text: slot.words, size: words, weight: 400 };
  const bold = (text: string): RowPart => ({ text, size: words, weight: 600 });
  const alike: readonly (readonly RowPart[])[] =
    looksLike === undefined
      ? [[]]
      : [
          [bold(`looks alike: ${looksLike.name} (${looksLike.seen})`)],
          [bold(`looks alike: ${looksLike.name}`)],
          [bold("looks alike")],
        ];
  const each: readonly RowPart[] =
    rack === undefined ? [] : [{ text: eachWords(rack), size: note, weight: 400 }];
  const lengths = (length: number, width: number): readonly TextBlock[] =>
    rack === undefined ? [] : [rackText(rack, width, { length, pieces: note })];
  const short = (width: number): readonly TextBlock[] =>
    rack === undefined ? [] : [shortRackText(rack, width, { length: note, pieces: note })];
  const lines = (parts: readonly RowPart[], width: number): readonly TextBlock[] =>
    parts.map(({ text, size, weight }) => setLines(text, size, weight, width));
  const row = head(slot, type);
  const last = alike.at(-1) ?? [];
  return {
    told: alike.flatMap((flag): readonly Wording[] => [
      (width) => stacked([setRow([...row, kind, ...flag], width), ...lengths(type.lengths, width)]),
      (width) =>
        stacked([
          setRow([...row, ...flag], width),
          ...lines([kind], width),
          ...lengths(type.lengths, width),
        ]),
      (width) =>
        stacked([
          setRow(row, width),
          ...lines([kind, ...flag], width),
          ...lengths(type.lengths, width),
        ]),
    ]),
    short:
      rack === undefined
        ? []
        : [
            (width) => stacked([setRow([...row, kind, ...last], width), ...lengths(note, width)]),
            (width) => stacked([setRow([...row, ...each, kind, ...last], width), ...short(width)]),
            (width) =>
              stacked([
                setRow([...row, ...each], width),
                ...lines([kind, ...last], width),
                ...short(width),
              ]),
          ],
    least: (width) => stacked([setRow([...row, ...each, ...last], width), ...short(width)]),
  };
}
