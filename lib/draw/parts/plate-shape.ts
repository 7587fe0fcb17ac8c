import type { LaidPlate } from "../../model/laid-plate.ts";
import type { PathPiece, Pen, Spot } from "../canvas.ts";
import type { FittedPlate } from "../layout/fit-plate.ts";
import { outlinePoints } from "../layout/outline-points.ts";

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
  pen.group("plate", {}, (group) => group.path([...pieces, ["Z"]], { fill: "metal", stroke: "bold" }));
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

/** The hooks as claws: their number, depth and spread from the plate, each curved to a point away from it. */
export function plateHooks(pen: Pen, plate: LaidPlate, fitted: FittedPlate): void {
  if (!plate.hooks) return;
  const { count, depth, spread, at } = plate.hooks;
  const middle = (fitted.box.y0 + fitted.box.y1) / 2;
  const away = at === "start" ? -1 : 1;
  const [origin] = fitted.project([0, 0]);
  const tip = (at === "start" ? fitted.box.x0 : fitted.box.x1) - away * 0.2;
  const half = Math.min(fitted.lengthOf(spread) / Math.max(2, count) / 2.4, fitted.lengthOf(depth) / 3.2);
  pen.group("hooks", { data: { hooks: count, depth, spread } }, (group) => {
    for (let index = 0; index < count; index++) {
      const off = count === 1 ? 0 : fitted.lengthOf(spread) * (index / (count - 1) - 0.5);
      const y = middle + off;
      const plateY = off / fitted.scale * 1000 + (plate.bounds.min[1] + plate.bounds.max[1]) / 2;
      const root = origin + fitted.lengthOf(edgeAt(plate, plateY, at)) - away * 0.15;
      const inward = off > 0 ? -1 : 1;
      const reach = tip - root;
      group.path(
        [
          ["M", root, y - half],
          ["C", root + reach * 0.5, y - half, root + reach * 0.9, y - half * 0.6 * inward, tip, y + half * 0.9 * inward],
          ["C", root + reach * 0.62, y + half * 0.5 * inward, root + reach * 0.5, y + half, root, y + half],
        ],
        { fill: "metal", stroke: "bold" },
      );
    }
  });
}
