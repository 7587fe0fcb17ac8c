import type { Box, Spot } from "./box.ts";
import type { Stretch } from "./stretch.ts";

const clamp = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);
const halfBar = 0.9;
const inset = 0.7;

/** Where a line towards `to` leaves the round end or long side of a hole that fills `target`. */
function rim(target: Box, [x, y]: Spot): Spot {
  const [width, height] = [target.x1 - target.x0, target.y1 - target.y0];
  const radius = Math.min(width, height) / 2;
  const core: Spot = [clamp(x, target.x0 + radius, target.x1 - radius), clamp(y, target.y0 + radius, target.y1 - radius)];
  const away = Math.hypot(x - core[0], y - core[1]);
  if (away <= radius) return core;
  return [core[0] + ((x - core[0]) * radius) / away, core[1] + ((y - core[1]) * radius) / away];
}

/** The straight leader from a hole's rim to its label, ended by a short bar along the label's near side. */
export function leaderBetween(target: Box, label: Box): { leader: Stretch; bar: Stretch } {
  const cx = (target.x0 + target.x1) / 2;
  const cy = (target.y0 + target.y1) / 2;
  const beside = label.y0 < cy && label.y1 > cy;
  if (beside) {
    const x = label.x0 > cx ? label.x0 + 0.3 : label.x1 - 0.3;
    const y = clamp(cy, label.y0 + 2, label.y1 - 2);
    return { leader: [rim(target, [x, y]), [x, y]], bar: [[x, y - halfBar], [x, y + halfBar]] };
  }
  const y = label.y0 >= cy ? label.y0 + inset : label.y1 - inset;
  const x = clamp(cx, label.x0 + halfBar + 0.3, label.x1 - halfBar - 0.3);
  return { leader: [rim(target, [x, y]), [x, y]], bar: [[x - halfBar, y], [x + halfBar, y]] };
}
