import type { LaidHole, LaidPlate, Point } from "../../model/laid-plate.ts";
import type { Um } from "../../model/measure.ts";
import type { ZoneKind } from "../../model/zone.ts";
import { around, type Box, boxAround, type Spot } from "./box.ts";
import { outlinePoints } from "./outline-points.ts";
import { zoneSize } from "./zone-size.ts";

/** A plate laid into a figure: one factor for both directions. */
export type FittedPlate = {
  /** Paper millimetres per millimetre of plate. */
  readonly scale: number;
  /** Plate micrometres to figure millimetres. */
  project(point: Point): Spot;
  /** A length of the plate (micrometres) in figure millimetres. */
  lengthOf(length: Um): number;
  readonly box: Box;
};

const round = (scale: number): number => {
  if (scale >= 1 && scale < 1.12) return 1;
  return Math.floor(scale * 100 + 1e-9) / 100;
};

/** The plate's extent with its hooks, micrometres. */
export function plateExtent(plate: LaidPlate): Box {
  const points = outlinePoints(plate.outline);
  const box = around(points.map((point) => boxAround(point, 0, 0)));
  if (!plate.hooks) return box;
  const { at, depth } = plate.hooks;
  return at === "start" ? { ...box, x0: box.x0 - depth } : { ...box, x1: box.x1 + depth };
}

/** The largest factor at which a plate fits a room (mm), rounded down to hundredths, or true size when nearly so; `ease` below 1 leaves
 * more space around it. */
export function scaleIn(plate: LaidPlate, room: Box, ease = 1): number {
  const extent = plateExtent(plate);
  const [across, down] = [room.x1 - room.x0, room.y1 - room.y0];
  const [wide, high] = [extent.x1 - extent.x0, extent.y1 - extent.y0];
  return round(Math.max(0.01, Math.min((across * 1000) / wide, (down * 1000) / high) * ease));
}

/** Centres a plate in a room (mm), as large as it goes there or at the given factor. */
export function fitPlate(
  plate: LaidPlate,
  room: Box,
  scale: number = scaleIn(plate, room),
): FittedPlate {
  const extent = plateExtent(plate);
  const lengthOf = (length: Um): number => (length * scale) / 1000;
  const left = (room.x0 + room.x1) / 2 - lengthOf((extent.x0 + extent.x1) / 2);
  const top = (room.y0 + room.y1) / 2 - lengthOf((extent.y0 + extent.y1) / 2);
  const project = ([x, y]: Point): Spot => [left + lengthOf(x), top + lengthOf(y)];
  const [x0, y0] = project([extent.x0, extent.y0]);
  const [x1, y1] = project([extent.x1, extent.y1]);
  return { scale, project, lengthOf, box: { x0, y0, x1, y1 } };
}

/** What the drawn symbol adds to a zone's own size, millimetres on paper: the toothed ring, the suture's bar, the wire's white edge. */
function symbolMargin(kind: ZoneKind, through: number): { x: number; y: number } {
  if (kind === "threaded") {
    const ring = Math.min(0.55, through * 0.13) + Math.min(0.6, through * 0.14);
    return { x: ring, y: ring };
  }
  if (kind === "suture") return { x: Math.max(0.5, through / 4), y: 0 };
  return kind === "wire" ? { x: 0.35, y: 0.35 } : { x: 0, y: 0 };
}

/** The box of a whole hole on the figure, its symbol's margins and line widths included. */
export function holeBox(hole: LaidHole, fitted: FittedPlate, line: number): Box {
  return around(
    hole.zones.map((zone) => {
      const size = zoneSize(zone);
      const margin = symbolMargin(zone.kind, fitted.lengthOf(size.through));
      const grow = (length: number, more: number): number =>
        fitted.lengthOf(length) + line + 2 * more;
      return boxAround(
        fitted.project(zone.at),
        grow(size.along, margin.x),
        grow(size.across, margin.y),
      );
    }),
  );
}
