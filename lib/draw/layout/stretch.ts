import type { Box, Spot } from "./box.ts";

/** A straight line between two points. */
export type Stretch = readonly [from: Spot, to: Spot];

const turn = ([ax, ay]: Spot, [bx, by]: Spot, [cx, cy]: Spot): number =>
  Math.sign((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));

const onLine = ([a, b]: Stretch, [x, y]: Spot): boolean =>
  x >= Math.min(a[0], b[0]) &&
  x <= Math.max(a[0], b[0]) &&
  y >= Math.min(a[1], b[1]) &&
  y <= Math.max(a[1], b[1]);

/** Whether two lines share a point. */
export function stretchesMeet(a: Stretch, b: Stretch): boolean {
  const [t1, t2] = [turn(a[0], a[1], b[0]), turn(a[0], a[1], b[1])];
  const [t3, t4] = [turn(b[0], b[1], a[0]), turn(b[0], b[1], a[1])];
  if (t1 !== t2 && t3 !== t4) return true;
  return (
    (t1 === 0 && onLine(a, b[0])) ||
    (t2 === 0 && onLine(a, b[1])) ||
    (t3 === 0 && onLine(b, a[0])) ||
    (t4 === 0 && onLine(b, a[1]))
  );
}

/** Whether a line's own box lies wholly beside another box grown by `clear`. */
const beside = (a: Spot, b: Spot, box: Box, clear: number): boolean =>
  Math.max(a[0], b[0]) < box.x0 - clear ||
  Math.min(a[0], b[0]) > box.x1 + clear ||
  Math.max(a[1], b[1]) < box.y0 - clear ||
  Math.min(a[1], b[1]) > box.y1 + clear;

/** Whether a line has any point inside a box or on its edge. */
export function stretchMeetsBox([from, to]: Stretch, box: Box): boolean {
  if (beside(from, to, box, 0)) return false;
  let start = 0;
  let end = 1;
  const along: readonly Spot[] = [
    [from[0] - box.x0, from[0] - to[0]],
    [box.x1 - from[0], to[0] - from[0]],
    [from[1] - box.y0, from[1] - to[1]],
    [box.y1 - from[1], to[1] - from[1]],
  ];
  for (const [room, speed] of along) {
    if (speed === 0) {
      if (room < 0) return false;
      continue;
    }
    const at = room / speed;
    if (speed > 0) end = Math.min(end, at);
    else start = Math.max(start, at);
    if (start > end) return false;
  }
  return true;
}

const toPoint = ([[ax, ay], [bx, by]]: Stretch, [x, y]: Spot): number => {
  const [dx, dy] = [bx - ax, by - ay];
  const long = dx * dx + dy * dy;
  const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / long));
  return Math.hypot(ax + t * dx - x, ay + t * dy - y);
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
  return near < r + clear;
}
