import type { Defined } from "../../model/definition.ts";
import type { Figure, TrayMapSlot } from "../../model/figure.ts";
import type { Interfaces } from "../../model/interfaces.ts";
import type { Slot, Tray } from "../../model/tray.ts";
import { drawFigure } from "../canvas.ts";
import { inMm } from "../parts/instrument-part.ts";
import { drawSlot } from "../parts/tray/tray-slot.ts";
import { edges } from "../tokens.ts";

const edge = edges.bold;
const wall = 0.8;

/** A tray from above, its cells to scale and as large as `size` (mm) allows; everything in it at the same one scale. */
export function trayMap(
  id: string,
  tray: Defined<Tray>,
  slots: readonly TrayMapSlot[],
  interfaces: Interfaces,
  size: { readonly width: number; readonly height: number },
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
  return drawFigure(id, about, (pen) => {
    pen.box(
      [edge, edge],
      inner.width * scale,
      inner.height * scale,
      { fill: "tint", stroke: "heavy", data: { tray: tray.id, scale } },
      1.5,
    );
    for (const slot of slots) {
      const place = places.get(slot.slot);
      if (place === undefined) throw new Error(`No slot "${slot.slot}" in tray "${tray.id}"`);
      const box = boxOf(place, cell);
      pen.group("slot", { at: [edge + box.x, edge + box.y], data: { slot: slot.slot } }, (own) => {
        drawSlot(own, slot, interfaces, box, scale);
      });
    }
  });
}

function boxOf({ at, span }: Slot, cell: { readonly width: number; readonly height: number }) {
  return {
    x: at[0] * cell.width + wall,
    y: at[1] * cell.height + wall,
    width: span[0] * cell.width - 2 * wall,
    height: span[1] * cell.height - 2 * wall,
  };
}
