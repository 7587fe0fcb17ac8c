import { type Box, boxAround, middle } from "./box.ts";
import { type LabelSpace, type LabelWish, labelReach, type Search } from "./label-candidate.ts";
import type { RailSide } from "./outline-rails.ts";

/** A box a label may fill: beside its hole on the plate, or in a row of a rail outside it. */
export type LabelSpot =
  | { readonly box: Box; readonly beside: true }
  | { readonly box: Box; readonly beside: false; readonly side: RailSide; readonly row: number };

const touching = 0.3;
const railGap = 0.9;
/** How many rows of labels stand above and below, and by how much more steps to the side grow with each. */
const ways = { likely: { rows: 2, growth: 0.2 }, all: { rows: 3, growth: 0.05 } } as const;
const corners = [0, -0.5, 0.5, -1, 1];

function besideSpots({ target, width }: LabelWish, height: number): LabelSpot[] {
  const [cx, cy] = middle(target);
  const dx = (target.x1 - target.x0 + width) / 2 + touching;
  const dy = (target.y1 - target.y0 + height) / 2 + touching;
  return corners
    .flatMap((part) => [
      [cx + part * dx, cy + dy] as const,
      [cx + part * dx, cy - dy] as const,
      [cx + dx, cy + part * dy] as const,
      [cx - dx, cy + part * dy] as const,
    ])
    .map((spot) => ({ box: boxAround(spot, width, height), beside: true }));
}

/** Steps to either side, finer near the middle, up to `most` mm. */
function shiftsUpTo(most: number, growth: number): number[] {
  const shifts = [0];
  for (let shift = 1; shift <= most; shift += 0.8 + shift * growth) shifts.push(shift, -shift);
  return shifts;
}

/** The boxes worth trying for one label: touching its hole, and in rows on the rails above and below the plate and one row
 * at its ends, from straight across outwards. */
export function labelSpots(wish: LabelWish, space: LabelSpace, search: Search): LabelSpot[] {
  const { rows, growth } = ways[search];
  const { target, width } = wish;
  const { height, rails } = space;
  const { area } = space;
  const [cx, cy] = middle(target);
  const spots = besideSpots(wish, height);
  const onRail = (side: RailSide, x0: number, y0: number, row: number): void => {
    const [x1, y1] = [x0 + width, y0 + height];
    if (x0 < area.x0 || x1 > area.x1 || y0 < area.y0 || y1 > area.y1) return;
    spots.push({ box: { x0, y0, x1, y1 }, beside: false, side, row });
  };
  for (const shift of shiftsUpTo(labelReach + width / 2, growth)) {
    const x0 = cx + shift - width / 2;
    const [top, bottom] = [rails("above", x0, x0 + width), rails("below", x0, x0 + width)];
    for (let row = 0; row < rows; row++) {
      const off = railGap + row * (height + touching);
      if (bottom + off - cy <= labelReach) onRail("below", x0, bottom + off, row);
      if (cy - top + off <= labelReach) onRail("above", x0, top - off - height, row);
    }
  }
  for (const shift of shiftsUpTo(labelReach + height / 2, growth)) {
    const y0 = cy + shift - height / 2;
    const left = rails("left", y0, y0 + height) - railGap;
    const right = rails("right", y0, y0 + height) + railGap;
    if (cx - left < labelReach) onRail("left", left - width, y0, 0);
    if (right - cx < labelReach) onRail("right", right, y0, 0);
  }
  return spots;
}
