import type { LaidPlate } from "../../model/laid-plate.ts";
import type { PathPiece, Pen, Spot } from "../canvas.ts";
import type { FittedPlate } from "../layout/fit-plate.ts";
import { outlinePoints } from "../layout/outline-points.ts";
import { drawClaws } from "./holes/claw.ts";

/** The plate's body from its own curves: metal with a bold edge. */
export function plateBody(pen: Pen, plate: LaidPlate, fitted: FittedPlate): void {
  const pieces: PathPiece[] = [["M", ...fitted.project(plate.outline.start)]];
  for (const segment of plate.outline.segments) {
    if ("line" in segment) pieces.push(["L", ...fitted.project(segment.line)]);
    else {
      const [a, b, to] = segment.curve.map(fitted.project) as [Spot, Spot, Spot];
      pieces.push(["C", ...a, ...b, ...to]);
    }
  }
  pen.group("plate", {}, (group) =>
    group.path([...pieces, ["Z"]], { fill: "metal", stroke: "bold" }),
  );
}

/** Where the plate's edge lies at the height `y` (micrometres), at its start or end. */
function edgeAt(plate: LaidPlate, y: number, at: "start" | "end"): number {
  const points = outlinePoints(plate.outline);
  const crossings = points.flatMap(([ax, ay], index) => {
    const [bx, by] = points[(index + 1) % points.length] ?? [ax, ay];
    return ay > y === by > y ? [] : [ax + ((y - ay) * (bx - ax)) / (by - ay)];
  });
  const all = crossings.length > 0 ? crossings : points.map(([x]) => x);
  return at === "start" ? Math.min(...all) : Math.max(...all);
}

/** The hooks as claws at the plate's end: their number, depth and spread from the plate. */
export function plateHooks(pen: Pen, plate: LaidPlate, fitted: FittedPlate): void {
  if (!plate.hooks) return;
  const { count, depth, spread, at } = plate.hooks;
  const middle = (plate.bounds.min[1] + plate.bounds.max[1]) / 2;
  const roots = [-0.5, -0.2, 0.2, 0.5].map((part) => edgeAt(plate, middle + spread * part, at));
  const inmost = at === "start" ? Math.max(...roots) : Math.min(...roots);
  const outmost = at === "start" ? plate.bounds.min[0] - depth : plate.bounds.max[0] + depth;
  const place = {
    at: fitted.project([inmost, middle]),
    scale: [at === "end" ? -fitted.scale : fitted.scale, fitted.scale] as const,
  };
  pen.group("hooks", { ...place, data: { hooks: count, depth, spread } }, (group) =>
    drawClaws(group, { count, depth: Math.abs(outmost - inmost) / 1000, spread: spread / 1000 }),
  );
}
