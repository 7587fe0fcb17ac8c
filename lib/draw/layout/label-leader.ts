import { leaders } from "../tokens.ts";
import type { Box, Spot } from "./box.ts";
import type { Stretch } from "./stretch.ts";

const clamp = (value: number, low: number, high: number): number =>
  Math.min(Math.max(value, low), high);
const { halfBar, inset } = leaders;

/** Where a line towards `to` leaves the round end or long side of a hole that fills `target`. */
function rim(target: Box, [x, y]: Spot): Spot {
  const [width, height] = [target.x1 - target.x0, target.y1 - target.y0];
  const radius = Math.min(width, height) / 2;
  const core: Spot = [
    clamp(x, target.x0 + radius, target.x1 - radius),
    clamp(y, target.y0 + radius, target.y1 - radius),
  ];
  const [dx, dy] = [x - core[0], y - core[1]];
  const away = Math.sqrt(dx * dx + dy * dy);
  if (away <= radius) return core;
  return [core[0] + (dx * radius) / away, core[1] + (dy * radius) / away];
}

/** The straight leaders from a hole's rim to its label: the shortest first, then those to the rest of the label's near side. */
export function leadersBetween(target: Box, label: Box): Stretch[] {
  const cx = (target.x0 + target.x1) / 2;
  const cy = (target.y0 + target.y1) / 2;
  if (label.y0 < cy && label.y1 > cy) {
    const x = label.x0 > cx ? label.x0 + 0.3 : label.x1 - 0.3;
    const [low, high] = [label.y0 + 2, label.y1 - 2];
    return spread(clamp(cy, low, high), low, high).map((y) => [rim(target, [x, y]), [x, y]]);
  }
  const y = label.y0 >= cy ? label.y0 + inset : label.y1 - inset;
  const [low, high] = [label.x0 + halfBar + 0.3, label.x1 - halfBar - 0.3];
  return spread(clamp(cx, low, high), low, high).map((x) => [rim(target, [x, y]), [x, y]]);
}

/** A place between two ends, then the ends and the middle where they are clearly elsewhere. */
function spread(first: number, low: number, high: number): number[] {
  const more = [(low + high) / 2, low, high].filter((place) => Math.abs(place - first) > 1);
  return [first, ...more];
}

/** The short bar that ends a leader along the near side of its label. */
export function barOf([, [x, y]]: Stretch, label: Box): Stretch {
  const upright = y > label.y0 + 2 * inset && y < label.y1 - 2 * inset;
  const [dx, dy] = upright ? [0, halfBar] : [halfBar, 0];
  return [
    [x - dx, y - dy],
    [x + dx, y + dy],
  ];
}
