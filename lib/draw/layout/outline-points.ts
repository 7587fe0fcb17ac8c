import type { LaidPlate, Point } from "../../model/laid-plate.ts";
import type { Spot } from "./box.ts";

const pieces = 8;

/** A plate's outline as a closed run of points, each curve cut into eight straight pieces; unit as given. */
export function outlinePoints(outline: LaidPlate["outline"]): Point[] {
  const points: Point[] = [outline.start];
  let here: Point = outline.start;
  for (const segment of outline.segments) {
    if ("line" in segment) {
      here = segment.line;
      points.push(here);
      continue;
    }
    const [a, b, to] = segment.curve;
    for (let step = 1; step <= pieces; step++) {
      const t = step / pieces;
      const s = 1 - t;
      const at = (axis: 0 | 1): number =>
        s * s * s * here[axis] +
        3 * s * s * t * a[axis] +
        3 * s * t * t * b[axis] +
        t * t * t * to[axis];
      points.push([at(0), at(1)]);
    }
    here = to;
  }
  return points;
}

/** Whether a point lies inside a closed run of points (even-odd). */
export function within(outline: readonly Spot[], [x, y]: Spot): boolean {
  let inside = false;
  outline.forEach(([ax, ay], at) => {
    const [bx, by] = outline[(at + 1) % outline.length] ?? [ax, ay];
    if (ay > y !== by > y && x < ax + ((y - ay) * (bx - ax)) / (by - ay)) inside = !inside;
  });
  return inside;
}
