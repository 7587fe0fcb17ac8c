import type { Defined } from "../../model/definition.ts";
import type { Figure, TrayMapSlot } from "../../model/figure.ts";
import type { Interfaces } from "../../model/interfaces.ts";
import type { Slot, Tray } from "../../model/tray.ts";
import { drawFigure } from "../canvas.ts";
import { inMm } from "../parts/instrument-part.ts";
import { type RowNeed, rowHeights } from "../parts/tray/row-heights.ts";
import { drawSlot, type PlacedSlot, type SlotType, slotLayer } from "../parts/tray/tray-slot.ts";
import { edges, typeSizes } from "../tokens.ts";

const edge = edges.bold;
const wall = 0.6;
const ease = 1.4;

const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);

/** Font sizes, mm: what is called out, words, notes. */
type TrayType = { readonly called: number; readonly body: number; readonly note: number };

/** A tray from above, as wide as `size` (mm) allows: its columns to scale, its rows as high as what lies in them asks for within
 * the height; everything that lies in it at the same one scale. */
export function trayMap(
  id: string,
  tray: Defined<Tray>,
  slots: readonly TrayMapSlot[],
  interfaces: Interfaces,
  size: { readonly width: number; readonly height: number },
  type: TrayType,
): Figure {
  const inner = { width: inMm(tray.size.width), height: inMm(tray.size.height) };
  const scale = Math.min(
    (size.width - 2 * edge) / inner.width,
    (size.height - 2 * edge) / inner.height,
  );
  const asked = slotsIn(tray, slots);
  const cell = {
    width: (inner.width / tray.grid.columns) * scale,
    height: (inner.height / tray.grid.rows) * scale,
  };
  const page = { rows: tray.grid.rows, room: size.height - 2 * edge, cell, scale };
  const { rows, placed } = fullest(typeSteps(type), (sizes) =>
    laidSlots(asked, interfaces, page, sizes),
  );
  const height = sum(rows);
  const about = {
    title: `${tray.name}: where everything lies`,
    description: `${slots.length} slots as they lie in the tray; what lies in them drawn at ${Math.round(scale * 100)} % of true size.`,
    width: inner.width * scale + 2 * edge,
    height: height + 2 * edge,
  };
  return drawFigure(id, about, (pen) => {
    pen.box(
      [edge, edge],
      inner.width * scale,
      height,
      { fill: "tint", stroke: "heavy", data: { tray: tray.id, scale } },
      1.5,
    );
    for (const { x, y, own } of placed)
      pen.group("slot", { at: [edge + x, edge + y], data: { slot: own.slot.slot } }, (inside) =>
        drawSlot(inside, own),
      );
  });
}

/** Whether pictures stand under their words, and what a slot has beyond its need, mm. */
type Ask = { readonly under: boolean; readonly more: number };

const asks: readonly Ask[] = [
  { under: true, more: ease },
  { under: true, more: 0 },
  { under: false, more: ease },
  { under: false, more: 0 },
];

type AskedSlot = { readonly slot: TrayMapSlot; readonly place: Slot };

function slotsIn(tray: Defined<Tray>, slots: readonly TrayMapSlot[]): readonly AskedSlot[] {
  const places = new Map(tray.slots.map((slot) => [slot.slot, slot]));
  return slots.map((slot) => {
    const place = places.get(slot.slot);
    if (place === undefined) throw new Error(`No slot "${slot.slot}" in tray "${tray.id}"`);
    return { slot, place };
  });
}

/** Rows of the tray's grid, the height they share, a cell of it to scale, mm; and the scale. */
type Page = {
  readonly rows: number;
  readonly room: number;
  readonly cell: { readonly width: number; readonly height: number };
  readonly scale: number;
};

/** The rows and slots of a tray with type of the given sizes, mm from its inner corner. */
function laidSlots(
  asked: readonly AskedSlot[],
  interfaces: Interfaces,
  { rows: count, room, cell, scale }: Page,
  type: SlotType,
): Laid {
  const layers = asked.map(({ slot, place }) => {
    const [across, down] = place.span;
    const width = across * cell.width - 2 * wall;
    const upright = down * cell.height > across * cell.width;
    return { place, width, of: slotLayer(slot, interfaces, { width, upright, scale }, type) };
  });
  const least = (under: boolean): readonly RowNeed[] =>
    layers.map(({ place, of }) => ({
      from: place.at[1],
      rows: place.span[1],
      height: of.need(room, under) + 2 * wall,
    }));
  const [above, beside] = [least(true), least(false)];
  const needs = ({ under, more }: Ask): readonly RowNeed[] =>
    (under ? above : beside).map((need) => ({ ...need, height: need.height + more }));
  const rows = rowHeights(asks.map(needs), count, { room, own: cell.height });
  const placed = layers.map(({ place, width, of }) => {
    const [column, row] = place.at;
    const height = sum(rows.slice(row, row + place.span[1])) - 2 * wall;
    const at = { x: column * cell.width + wall, y: sum(rows.slice(0, row)) + wall };
    return { ...at, own: of.place({ width, height }) };
  });
  return { rows, placed };
}

/** From the largest type to the least, alike in all slots: words give way before lengths, lengths before the mark, which never falls below the size of body. */
function typeSteps({ called, body, note }: TrayType): readonly SlotType[] {
  const small = Math.max(note, typeSizes.small);
  const middle = (body + small) / 2;
  return [
    { mark: called, words: body, lengths: body, note: small },
    { mark: called, words: small, lengths: body, note: small },
    { mark: called, words: small, lengths: middle, note: small },
    { mark: body, words: small, lengths: middle, note: small },
    { mark: body, words: small, lengths: small, note: small },
  ];
}

type Laid = {
  readonly rows: readonly number[];
  readonly placed: readonly { readonly x: number; readonly y: number; readonly own: PlacedSlot }[];
};

/** What the step gives in which least is lacking, the largest type of those alike. */
function fullest(steps: readonly SlotType[], lay: (type: SlotType) => Laid): Laid {
  let best: { readonly laid: Laid; readonly lacks: number } | undefined;
  for (const type of steps) {
    const laid = lay(type);
    const lacks = sum(laid.placed.map(({ own }) => own.lacks));
    if (best === undefined || lacks < best.lacks) best = { laid, lacks };
    if (best.lacks === 0) break;
  }
  if (best === undefined) throw new Error("No size of type was tried");
  return best.laid;
}
