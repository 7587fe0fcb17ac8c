import type { Box, Spot } from "./box.ts";
import type { Stretch } from "./stretch.ts";

const clamp = (value: number, low: number, high: number): number =>
  Math.min(Math.max(value, low), high);
const halfBar = 0.9;
const inset = 0.45;

/** Where a line towards `to` leaves the round end or long side of a hole that fills `target`. */
function rim(target: Box, [x, y]: Spot): Spot {
  const [width, height] = [target.x1 - target.x0, target.y1 - target.y0];
  const radius = Math.min(width, height) / 2;
  const core: Spot = [
    clamp(x, target.x0 + radius, target.x1 - radius),
    clamp(y, target.y0 + radius, target.y1 - radius),
  ];
  const away = Math.hypot(x - core[0], y - core[1]);
  if (away <= radius) return core;
  return [core[0] + ((x - core[0]) * radius) / away, core[1] + ((y - core[1]) * radius) / away];
}

/** A straight line and the short bar that ends it. */
export type Leader = { readonly leader: Stretch; readonly bar: Stretch };

/** The straight leaders from a hole's rim to its label, each ended by a short bar along the label's near side: the shortest
 * first, then those to the side's middle and far end. */
export function leadersBetween(target: Box, label: Box): Leader[] {
  const cx = (target.x0 + target.x1) / 2;
  const cy = (target.y0 + target.y1) / 2;
  if (label.y0 < cy && label.y1 > cy) {
    const x = label.x0 > cx ? label.x0 + 0.3 : label.x1 - 0.3;
    const y = clamp(cy, label.y0 + 2, label.y1 - 2);
    return [
      {
        leader: [rim(target, [x, y]), [x, y]],
        bar: [
          [x, y - halfBar],
          [x, y + halfBar],
        ],
      },
    ];
  }
  const y = label.y0 >= cy ? label.y0 + inset : label.y1 - inset;
  const [low, high] = [label.x0 + halfBar + 0.3, label.x1 - halfBar - 0.3];
  const near = clamp(cx, low, high);
  const ends = [near, (low + high) / 2, near === low ? high : low];
  return ends.map((x) => ({
    leader: [rim(target, [x, y]), [x, y]],
    bar: [
      [x - halfBar, y],
      [x + halfBar, y],
    ],
  }));
}
