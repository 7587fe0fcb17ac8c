import type { Box, Spot } from "./box.ts";

/** A straight line between two points. */
export type Stretch = readonly [from: Spot, to: Spot];

/** Whether the lines from a to b and from c to d share a point: their boxes do, and neither has both ends of the other strictly on one
 * side. */
export function linesMeet(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  dx: number,
  dy: number,
): boolean {
  if (Math.max(ax, bx) < Math.min(cx, dx) || Math.max(cx, dx) < Math.min(ax, bx)) return false;
  if (Math.max(ay, by) < Math.min(cy, dy) || Math.max(cy, dy) < Math.min(ay, by)) return false;
  const c = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  const d = (bx - ax) * (dy - ay) - (by - ay) * (dx - ax);
  if ((c > 0 && d > 0) || (c < 0 && d < 0)) return false;
  const a = (dx - cx) * (ay - cy) - (dy - cy) * (ax - cx);
  const b = (dx - cx) * (by - cy) - (dy - cy) * (bx - cx);
  return !((a > 0 && b > 0) || (a < 0 && b < 0));
}

/** Whether two lines share a point. */
const stretchesMeet = ([a, b]: Stretch, [c, d]: Stretch): boolean =>
  linesMeet(a[0], a[1], b[0], b[1], c[0], c[1], d[0], d[1]);

/** Whether a line's own box lies wholly beside another box grown by `clear`. */
const beside = (a: Spot, b: Spot, box: Box, clear: number): boolean =>
  Math.max(a[0], b[0]) < box.x0 - clear ||
  Math.min(a[0], b[0]) > box.x1 + clear ||
  Math.max(a[1], b[1]) < box.y0 - clear ||
  Math.min(a[1], b[1]) > box.y1 + clear;

/** Whether the line from a to b has any point inside a box or on its edge: it does when no side of the box, nor the line itself, parts
 * the two. */
export function lineMeetsBox(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
): boolean {
  if ((ax < x0 && bx < x0) || (ax > x1 && bx > x1)) return false;
  if ((ay < y0 && by < y0) || (ay > y1 && by > y1)) return false;
  const [dx, dy] = [bx - ax, by - ay];
  const a = dx * (y0 - ay) - dy * (x0 - ax);
  const b = dx * (y0 - ay) - dy * (x1 - ax);
  const c = dx * (y1 - ay) - dy * (x0 - ax);
  const d = dx * (y1 - ay) - dy * (x1 - ax);
  return !((a > 0 && b > 0 && c > 0 && d > 0) || (a < 0 && b < 0 && c < 0 && d < 0));
}

/** Whether a line has any point inside a box or on its edge. */
export const stretchMeetsBox = ([a, b]: Stretch, { x0, y0, x1, y1 }: Box): boolean =>
  lineMeetsBox(a[0], a[1], b[0], b[1], x0, y0, x1, y1);

/** The square of a point's distance from a line. */
const toPoint = ([a, b]: Stretch, [x, y]: Spot): number => {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const long = dx * dx + dy * dy;
  const part = long === 0 ? 0 : ((x - a[0]) * dx + (y - a[1]) * dy) / long;
  const t = Math.max(0, Math.min(1, part));
  const [ox, oy] = [a[0] + t * dx - x, a[1] + t * dy - y];
  return ox * ox + oy * oy;
};

/** Whether a line comes nearer than `clear` to the stadium (a circle where as long as wide) that fills a box. */
export function stretchMeetsStadium(stretch: Stretch, box: Box, clear: number): boolean {
  if (beside(stretch[0], stretch[1], box, clear)) return false;
  const r = Math.min(box.x1 - box.x0, box.y1 - box.y0) / 2;
  const core: Stretch = [
    [box.x0 + r, box.y0 + r],
    [box.x1 - r, box.y1 - r],
  ];
  if (stretchesMeet(stretch, core)) return true;
  const near = Math.min(
    toPoint(stretch, core[0]),
    toPoint(stretch, core[1]),
    toPoint(core, stretch[0]),
    toPoint(core, stretch[1]),
  );
  return near < (r + clear) * (r + clear);
}
