import type { TrayMapSlot } from "../../../model/figure.ts";
import type { Interfaces } from "../../../model/interfaces.ts";
import type { Pen } from "../../canvas.ts";
import { drawLookAlikeStrip, stripWidth } from "./look-alike-strip.ts";
import { rackText } from "./rack-text.ts";
import { layOutSlot } from "./slot-layout.ts";
import { slotPicture } from "./slot-picture.ts";
import { drawText, setLines, setRow, stacked, type RowPart, type TextBlock } from "./slot-text.ts";

const pad = 1.1;

/** One slot of a tray, its corner at the origin: outline, name, mark, pieces, words, what lies in it at the tray's scale, and its look-alike. */
export function drawSlot(pen: Pen, slot: TrayMapSlot, interfaces: Interfaces, size: { readonly width: number; readonly height: number }, scale: number): void {
  const left = pad + (slot.looksLike === undefined ? 0 : stripWidth + 0.4);
  const [width, height] = [size.width - left - pad, size.height - 2 * pad];
  pen.box([0, 0], size.width, size.height, { fill: "metal", stroke: "line" }, 0.8);
  if (slot.looksLike !== undefined) drawLookAlikeStrip(pen, size.height);
  const picture = slotPicture(slot, interfaces, scale);
  const placed = layOutSlot({ width, height }, wordings(slot), picture);
  pen.group("slot-words", { at: [left + placed.textAt[0], pad + placed.textAt[1]] }, (inner) => drawText(inner, placed.text));
  if (picture === undefined || placed.picture === undefined) return;
  const { at, length, upright } = placed.picture;
  const turn = upright ? { turn: 90 } : {};
  pen.group("slot-picture", { at: [left + at[0], pad + at[1]], ...turn }, (inner) => picture.draw(inner, length));
}

function wordings(slot: TrayMapSlot): readonly ((width: number) => TextBlock)[] {
  const alike = slot.looksLike === undefined ? undefined : `looks like ${slot.looksLike}`;
  const head: readonly RowPart[] = [
    { text: slot.slot, size: "small", weight: 600, colour: "accent" },
    { text: slot.mark, size: "strong", weight: 700 },
    { text: slot.quantity, size: "body", weight: 600 },
  ];
  const words: RowPart = { text: slot.words, size: "small", weight: 400 };
  const warning: readonly RowPart[] = alike === undefined ? [] : [{ text: alike, size: "small", weight: 600 }];
  const rack = (width: number): readonly TextBlock[] => (slot.rack === undefined ? [] : [rackText(slot.rack, width)]);
  const lines = (width: number): readonly TextBlock[] => (alike === undefined ? [] : [setLines(alike, "small", 600, width)]);
  return [
    (width) => stacked([setRow([...head, words, ...warning], width), ...rack(width)]),
    (width) => stacked([setRow(head, width), setLines(slot.words, "small", 400, width), ...lines(width), ...rack(width)]),
    (width) => stacked([setRow(head, width), ...lines(width), ...rack(width)]),
  ];
}
