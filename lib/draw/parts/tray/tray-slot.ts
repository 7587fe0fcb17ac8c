import type { TrayMapSlot } from "../../../model/figure.ts";
import type { Interfaces } from "../../../model/interfaces.ts";
import type { Pen } from "../../canvas.ts";
import { gaps } from "../../tokens.ts";
import { drawLookAlikeStrip, stripWidth } from "./look-alike-strip.ts";
import { eachWords, rackText, shortRackText } from "./rack-text.ts";
import { layOutSlot, type SlotLayout } from "./slot-layout.ts";
import { type SlotPicture, slotPicture } from "./slot-picture.ts";
import { drawText, type RowPart, setLines, setRow, stacked, type TextBlock } from "./slot-text.ts";

const pad = 1.1;

/** One slot of a tray, its corner at the origin: outline, name, mark, pieces, words, what lies in it at the tray's scale, and its look-alike. */
export function drawSlot(
  pen: Pen,
  slot: TrayMapSlot,
  interfaces: Interfaces,
  size: { readonly width: number; readonly height: number },
  scale: number,
): void {
  const left = pad + (slot.looksLike === undefined ? 0 : stripWidth + gaps.touching);
  const [width, height] = [size.width - left - pad, size.height - 2 * pad];
  pen.box([0, 0], size.width, size.height, { fill: "metal", stroke: "line" }, 0.8);
  if (slot.looksLike !== undefined) drawLookAlikeStrip(pen, size.height);
  const picture = slotPicture(slot, interfaces, scale);
  const placed = layOut(slot, { width, height }, picture);
  pen.group(
    "slot-words",
    {
      at: [left + placed.textAt[0], pad + placed.textAt[1]],
      data: placed.overflows === true ? { overflow: slot.slot } : {},
    },
    (inner) => drawText(inner, placed.text),
  );
  if (picture === undefined || placed.picture === undefined) return;
  const { at, length, upright } = placed.picture;
  const turn = upright ? { turn: 90 } : {};
  pen.group("slot-picture", { at: [left + at[0], pad + at[1]], ...turn }, (inner) =>
    picture.draw(inner, length),
  );
}

/** A rack's lengths matter more than its screw's picture: they are set large where there is room, and the picture is drawn only beside the full words. */
function layOut(
  slot: TrayMapSlot,
  room: { readonly width: number; readonly height: number },
  picture: SlotPicture | undefined,
): SlotLayout {
  const groups = wordings(slot);
  const { rack } = slot;
  if (rack === undefined) return layOutSlot(room, groups, picture);
  const large = (["strong", "body"] as const).map(
    (size) => (width: number) => stacked([setRow(named(slot), width), rackText(rack, width, size)]),
  );
  const legible = layOutSlot(room, [large], undefined);
  if (legible.overflows !== true) return legible;
  const roomy = layOutSlot(room, [groups[0]?.slice(0, 2) ?? []], picture);
  return roomy.picture === undefined ? layOutSlot(room, groups, undefined) : roomy;
}

type Wording = (width: number) => TextBlock;

/** A slot's name, mark, pieces and kind in words. */
function named(slot: TrayMapSlot): readonly RowPart[] {
  return [
    { text: slot.slot, size: "small", weight: 600, colour: "accent" },
    { text: slot.mark, size: "strong", weight: 700 },
    { text: slot.quantity, size: "body", weight: 600 },
    { text: slot.words, size: "small", weight: 400 },
  ];
}

/** From the fullest words to the fewest: first with the kind in words, then the marks alone; look-alikes always say so. */
function wordings(slot: TrayMapSlot): readonly (readonly Wording[])[] {
  const all = named(slot);
  const head = all.slice(0, -1);
  const told = alikeWords(
    slot.looksLike === undefined ? undefined : `looks alike: ${slot.looksLike}`,
  );
  const flagged = alikeWords(slot.looksLike === undefined ? undefined : "looks alike");
  const { rack } = slot;
  const each: readonly RowPart[] =
    rack === undefined ? [] : [{ text: eachWords(rack), size: "small", weight: 400 }];
  const full = (width: number): readonly TextBlock[] =>
    rack === undefined ? [] : [rackText(rack, width)];
  const short = (width: number): readonly TextBlock[] =>
    rack === undefined ? [] : [shortRackText(rack, width)];
  const lines = (
    parts: readonly RowPart[],
    alike: readonly RowPart[],
    width: number,
  ): readonly TextBlock[] => [
    setRow(parts, width),
    setLines(slot.words, "small", 400, width),
    ...alike.map(({ text }) => setLines(text, "small", 600, width)),
  ];
  return [
    [
      (width) => stacked([setRow([...all, ...told], width), ...full(width)]),
      (width) => stacked([...lines(head, told, width), ...full(width)]),
      (width) => stacked([setRow([...all, ...flagged], width), ...full(width)]),
      (width) =>
        stacked([setRow([...head, ...each, ...all.slice(-1), ...flagged], width), ...short(width)]),
      (width) => stacked([...lines([...head, ...each], flagged, width), ...short(width)]),
    ],
    [(width) => stacked([setRow([...head, ...each, ...flagged], width), ...short(width)])],
  ];
}

const alikeWords = (text: string | undefined): readonly RowPart[] =>
  text === undefined ? [] : [{ text, size: "small", weight: 600 }];
