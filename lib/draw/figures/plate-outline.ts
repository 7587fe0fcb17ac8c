import type { Pictures } from "../../model/figure.ts";
import { plateName } from "../../model/plate-name.ts";
import { drawFigure } from "../canvas.ts";
import { fitPlate, plateExtent } from "../layout/fit-plate.ts";
import { placedHole } from "../parts/placed-hole.ts";
import { plateBody, plateHooks } from "../parts/plate-shape.ts";
import { edges } from "../tokens.ts";

const edge = edges.bold;

/** A plate from above without words, in true proportion and at most `width` mm long, for lists and trays. */
export const plateOutline: Pictures["plateOutline"] = (id, plate, width) => {
  const extent = plateExtent(plate);
  const long = width - 2 * edge;
  const high = (long * (extent.y1 - extent.y0)) / (extent.x1 - extent.x0);
  const fitted = fitPlate(plate, { x0: edge, x1: width - edge, y0: edge, y1: edge + high });
  const about = {
    title: `Outline of ${plateName(plate)}`,
    description: `${plate.holes.length} holes.`,
    width,
    height: high + 2 * edge,
  };
  return drawFigure(id, about, (pen) =>
    pen.group("outline", { data: { scale: fitted.scale, plate: plate.id } }, (group) => {
      plateHooks(group, plate, fitted);
      plateBody(group, plate, fitted);
      for (const hole of plate.holes) placedHole(group, hole, fitted);
    }),
  );
};
