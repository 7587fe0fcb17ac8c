import type { Interfaces } from "../../model/interfaces.ts";
import type { PathPiece, Spot } from "../canvas.ts";
import { inMm } from "./instrument-part.ts";
import type { EndView } from "./shape.ts";

type Form = Interfaces["drives"][string]["form"];

/** The drive of the registry, size in mm; throws (our own fault) when the registry lacks it. */
export function driveOf(
  interfaces: Interfaces,
  id: string,
): { readonly form: Form; readonly across: number } {
  const found = interfaces.drives[id];
  if (found === undefined) throw new Error(`No drive "${id}" in the registry`);
  return { form: found.form, across: inMm(found.across) };
}

/** The section of a driver's tip at true size, seen from the end. */
export function driveView(form: Form, across: number): EndView {
  return {
    width: across,
    half: across / 2,
    draw(pen, centre) {
      pen.group("drive", { at: centre, data: { drive: form, across } }, (inner) => {
        inner.path(driveOutline(form, across / 2), { fill: "ink", stroke: "none" });
      });
    },
  };
}

/** Outline of a drive about the origin, `radius` mm to its outermost point. */
function driveOutline(form: Form, radius: number): readonly PathPiece[] {
  if (form === "hexalobular")
    return around(72, (angle) => radius * (0.86 + 0.14 * Math.cos(6 * angle)));
  if (form === "hexagonal") return around(6, () => radius);
  if (form === "square") return around(4, () => radius);
  return closed(cross.map(([x, y]) => [x * radius, y * radius]));
}

const arm = 0.24;
const cross: readonly Spot[] = [
  [1, -arm],
  [1, arm],
  [arm, arm],
  [arm, 1],
  [-arm, 1],
  [-arm, arm],
  [-1, arm],
  [-1, -arm],
  [-arm, -arm],
  [-arm, -1],
  [arm, -1],
  [arm, -arm],
];

function around(count: number, radiusAt: (angle: number) => number): readonly PathPiece[] {
  const angles = Array.from({ length: count }, (_, index) => (index * 2 * Math.PI) / count);
  return closed(
    angles.map((angle) => [radiusAt(angle) * Math.cos(angle), radiusAt(angle) * Math.sin(angle)]),
  );
}

function closed(spots: readonly Spot[]): readonly PathPiece[] {
  return [...spots.map(([x, y], index): PathPiece => [index === 0 ? "M" : "L", x, y]), ["Z"]];
}
