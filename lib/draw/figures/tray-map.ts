import type { Defined } from "../../model/definition.ts";
import type { Figure, TrayMapSlot } from "../../model/figure.ts";
import type { Interfaces } from "../../model/interfaces.ts";
import type { Slot, Tray } from "../../model/tray.ts";
import { drawFigure } from "../canvas.ts";
import { inMm } from "../parts/instrument-part.ts";
import { drawSlot, placeSlot, type SlotType } from "../parts/tray/tray-slot.ts";
import { edges, typeSizes } from "../tokens.ts";

const edge = edges.bold;
const wall = 0.6;

/** Font sizes, mm: what is called out, words, notes. */
type TrayType = { readonly called: number; readonly body: number; readonly note: number };

/** A tray from above, its cells to scale and as large as `size` (mm) allows; everything in it at the same one scale. */
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
  const cell = {
    width: (inner.width / tray.grid.columns) * scale,
    height: (inner.height / tray.grid.rows) * scale,
  };
  const places = new Map(tray.slots.map((slot) => [slot.slot, slot]));
  const about = {
    title: `${tray.name}: where everything lies`,
    description: `${slots.length} slots as they lie in the tray, drawn at ${Math.round(scale * 100)} % of true size.`,
    width: inner.width * scale + 2 * edge,
    height: inner.height * scale + 2 * edge,
  };
  const placed = fullest(typeSteps(type), (sizes) =>
    slots.map((slot) => {
      const place = places.get(slot.slot);
      if (place === undefined) throw new Error(`No slot "${slot.slot}" in tray "${tray.id}"`);
      const box = boxOf(place, cell);
      return { box, placed: placeSlot(slot, interfaces, box, scale, sizes) };
    }),
  );
  return drawFigure(id, about, (pen) => {
    pen.box(
      [edge, edge],
      inner.width * scale,
      inner.height * scale,
      { fill: "tint", stroke: "heavy", data: { tray: tray.id, scale } },
      1.5,
    );
    for (const { box, placed: own } of placed)
      pen.group(
        "slot",
        { at: [edge + box.x, edge + box.y], data: { slot: own.slot.slot } },
        (inside) => drawSlot(inside, own),
      );
  });
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

/** What the step gives in which least is lacking, the largest type of those alike. */
function fullest<T extends { readonly placed: { readonly lacks: number } }>(
  steps: readonly SlotType[],
  lay: (type: SlotType) => readonly T[],
): readonly T[] {
  let best: { readonly laid: readonly T[]; readonly lacks: number } | undefined;
  for (const type of steps) {
    const laid = lay(type);
    const lacks = laid.reduce((sum, { placed }) => sum + placed.lacks, 0);
    if (best === undefined || lacks < best.lacks) best = { laid, lacks };
    if (best.lacks === 0) break;
  }
  return best?.laid ?? [];
}

function boxOf({ at, span }: Slot, cell: { readonly width: number; readonly height: number }) {
  return {
    x: at[0] * cell.width + wall,
    y: at[1] * cell.height + wall,
    width: span[0] * cell.width - 2 * wall,
    height: span[1] * cell.height - 2 * wall,
  };
}
