import type { LaidPlate, Point } from "../model/laid-plate.ts";

/** Where a cubic of one coordinate turns, as parameters between 0 and 1. */
function turns(p0: number, p1: number, p2: number, p3: number): readonly number[] {
  const [a, b, c] = [p3 - 3 * p2 + 3 * p1 - p0, 2 * (p2 - 2 * p1 + p0), p1 - p0];
  const roots =
    a === 0
      ? b === 0
        ? []
        : [-c / b]
      : [1, -1].map((sign) => (-b + sign * Math.sqrt(b * b - 4 * a * c)) / (2 * a));
  return roots.filter((t) => t > 0 && t < 1);
}

const at = (t: number, p0: number, p1: number, p2: number, p3: number): number =>
  (1 - t) ** 3 * p0 + 3 * (1 - t) ** 2 * t * p1 + 3 * (1 - t) * t * t * p2 + t ** 3 * p3;

/** The exact extent of a closed outline of lines and cubics, rounded to whole micrometres. */
export function outlineBounds({ start, segments }: LaidPlate["outline"]): LaidPlate["bounds"] {
  const extent = (axis: 0 | 1): readonly [number, number] => {
    const values = [start[axis]];
    let from: Point = start;
    for (const segment of segments) {
      const to = "line" in segment ? segment.line : segment.curve[2];
      values.push(to[axis]);
      if ("curve" in segment) {
        const [p0, p1, p2, p3] = [
          from[axis],
          segment.curve[0][axis],
          segment.curve[1][axis],
          to[axis],
        ];
        values.push(...turns(p0, p1, p2, p3).map((t) => at(t, p0, p1, p2, p3)));
      }
      from = to;
    }
    return [Math.round(Math.min(...values)), Math.round(Math.max(...values))];
  };
  const [x, y] = [extent(0), extent(1)];
  return { min: [x[0], y[0]], max: [x[1], y[1]] };
}
