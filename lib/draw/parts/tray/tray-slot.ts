import type { TrayMapSlot } from "../../../model/figure.ts";
import type { Interfaces } from "../../../model/interfaces.ts";
import type { Pen } from "../../canvas.ts";
import { edges, gaps } from "../../tokens.ts";
import { drawLookAlikeStrip, stripWidth } from "./look-alike-strip.ts";
import { eachWords, rackText, shortRackText } from "./rack-text.ts";
import { layOutSlot, type SlotLayout } from "./slot-layout.ts";
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

/** Lays out a slot of `size` (mm) with type of the given sizes: name, mark, pieces, words, what lies in it at the tray's scale, and its look-alike. */
export function placeSlot(
  slot: TrayMapSlot,
  interfaces: Interfaces,
  size: PlacedSlot["size"],
  scale: number,
  type: SlotType,
): PlacedSlot {
  const strip = slot.looksLike === undefined ? 0 : stripWidth;
  const left = beside + strip + (strip > 0 ? gaps.touching : 0);
  const spare = [left - strip - edges.slot, beside - edges.slot] as const;
  const room = { width: size.width - left - beside, height: size.height - 2 * above, spare };
  const picture = slotPicture(slot, interfaces, scale);
  const placed = layOut(slot, room, picture, type);
  return { slot, size, left, ...(picture ? { picture } : {}), ...placed };
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

type Wording = (width: number) => TextBlock;
type Room = PlacedSlot["size"] & { readonly spare: readonly [number, number] };
type Placed = Pick<PlacedSlot, "layout" | "lacks">;

/** The picture with what tells a look-alike, else with the word that there is one; then the words alone in the same order, the
 * mark with the picture, and words that run over. A rack's lengths come before its screw's picture. */
function layOut(
  slot: TrayMapSlot,
  room: Room,
  picture: SlotPicture | undefined,
  type: SlotType,
): Placed {
  const { telling, full, least } = wordings(slot, type);
  const alone = (words: readonly Wording[]) => layOutSlot(room, [words], undefined);
  const tries: readonly (() => SlotLayout)[] = [
    () => (slot.rack ? alone(telling) : layOutSlot(room, [telling], picture)),
    () => layOutSlot(room, [full], picture),
    () => alone(telling),
    () => alone(full),
    () => layOutSlot(room, [least], picture),
  ];
  const wanted = [slot.rack === undefined && picture !== undefined, picture !== undefined];
  for (const [lacks, lay] of tries.entries()) {
    const layout = lay();
    const pictured = layout.picture !== undefined || wanted[lacks] !== true;
    if (layout.over === undefined && pictured) return { layout, lacks };
  }
  const layout = layOutSlot(room, [least], undefined);
  return { layout, lacks: tries.length + (layout.over ?? 0) };
}

/** A slot's name, mark and pieces. */
const head = (slot: TrayMapSlot, { mark, words, note }: SlotType): readonly RowPart[] => [
  { text: slot.slot, size: note, weight: 600, colour: "accent" },
  { text: slot.mark, size: mark, weight: 700 },
  { text: slot.quantity, size: words, weight: 600 },
];

/** Words that say what tells a look-alike; from there to the fewest that still say what lies here and that it looks alike; the mark alone. */
function wordings(
  slot: TrayMapSlot,
  type: SlotType,
): Readonly<Record<"telling" | "full" | "least", readonly Wording[]>> {
  const { rack } = slot;
  const { words, note } = type;
  const kind: RowPart = { text: slot.words, size: words, weight: 400 };
  const alike = (text: string): readonly RowPart[] =>
    slot.looksLike === undefined ? [] : [{ text, size: words, weight: 600 }];
  const told = alike(`looks alike: ${slot.looksLike}`);
  const flagged = alike("looks alike");
  const each: readonly RowPart[] =
    rack === undefined ? [] : [{ text: eachWords(rack), size: note, weight: 400 }];
  const lengths = (length: number, width: number): readonly TextBlock[] =>
    rack === undefined ? [] : [rackText(rack, width, { length, pieces: note })];
  const short = (width: number): readonly TextBlock[] =>
    rack === undefined ? [] : [shortRackText(rack, width, { length: note, pieces: note })];
  const inLines = (first: readonly RowPart[], last: readonly RowPart[], width: number) => [
    setRow(first, width),
    ...[kind, ...last].map(({ text, weight }) => setLines(text, words, weight, width)),
  ];
  const row = head(slot, type);
  return {
    telling: [
      (width) => stacked([setRow([...row, kind, ...told], width), ...lengths(type.lengths, width)]),
      (width) => stacked([...inLines(row, told, width), ...lengths(type.lengths, width)]),
    ],
    full: [
      (width) => stacked([setRow([...row, kind, ...flagged], width), ...lengths(note, width)]),
      (width) => stacked([...inLines(row, flagged, width), ...lengths(note, width)]),
      (width) => stacked([setRow([...row, ...each, kind, ...flagged], width), ...short(width)]),
      (width) => stacked([...inLines([...row, ...each], flagged, width), ...short(width)]),
    ],
    least: [(width) => stacked([setRow([...row, ...each, ...flagged], width), ...short(width)])],
  };
}
