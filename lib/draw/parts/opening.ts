import type { ZoneKind } from "../../model/zone.ts";
import type { Look, PathPiece, Pen, Spot } from "../canvas.ts";

/** A zone of an opening as drawn from above, millimetres around `at`: seat along and across, passage `through`, `slot` long. */
export type DrawnZone = {
  readonly kind: ZoneKind;
  readonly at: Spot;
  readonly along: number;
  readonly across: number;
  readonly through: number;
  readonly slot: number;
};

/** A stadium lying along x around a middle; a circle when it is as long as wide. */
function stadium([cx, cy]: Spot, long: number, wide: number): PathPiece[] {
  const [r, half] = [wide / 2, (long - wide) / 2];
  return [
    ["M", cx - half, cy - r],
    ["L", cx + half, cy - r],
    ["A", r, 0, 1, cx + half, cy + r],
    ["L", cx - half, cy + r],
    ["A", r, 0, 1, cx - half, cy - r],
    ["Z"],
  ];
}

/** A ring of inward teeth: as many as keep each near 0.6 mm wide, twelve at least. */
function toothed([cx, cy]: Spot, diameter: number): PathPiece[] {
  const outer = diameter / 2;
  const teeth = Math.min(24, Math.max(12, Math.round((Math.PI * diameter) / 0.75)));
  const inner = outer - Math.min(outer * 0.24, 0.7);
  const pieces: PathPiece[] = [];
  for (let at = 0; at < teeth * 2; at++) {
    const [angle, r] = [(Math.PI * at) / teeth, at % 2 === 0 ? outer : inner];
    pieces.push([at === 0 ? "M" : "L", cx + r * Math.cos(angle), cy + r * Math.sin(angle)]);
  }
  return [...pieces, ["Z"]];
}

const outer = (zone: DrawnZone): PathPiece[] => stadium(zone.at, zone.along, zone.across);

function inner(pen: Pen, zone: DrawnZone): void {
  const { at, through, slot } = zone;
  const [x, y] = at;
  const r = through / 2;
  if (zone.kind === "threaded") pen.path(toothed(at, through), { fill: "metal", stroke: "hair" });
  else if (zone.kind === "wire") {
    pen.line([x - r * 0.5, y], [x + r * 0.5, y], { stroke: "hair" });
    pen.line([x, y - r * 0.5], [x, y + r * 0.5], { stroke: "hair" });
  } else if (zone.kind === "suture") pen.line([x - r, y], [x + r, y]);
  else pen.path(stadium(at, slot, through), { stroke: "hair" });
}

/** An opening from above: teeth for a thread, a seat around a plain passage, a cross for a wire, a bar for a suture;
 * the zones of a combined opening run into one another. */
export function drawOpening(pen: Pen, zones: readonly DrawnZone[]): void {
  const rim: Look = { fill: "metal", stroke: "line" };
  for (const zone of zones) pen.path(outer(zone), rim);
  if (zones.length > 1) for (const zone of zones) pen.path(outer(zone), { fill: "metal", stroke: "none" });
  for (const zone of zones) inner(pen, zone);
}
