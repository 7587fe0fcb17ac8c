import { type Box, boxAround, middle } from "./box.ts";
import { type LabelSpace, type LabelWish, labelReach } from "./label-candidate.ts";
import type { OutlineRails, RailSide } from "./outline-rails.ts";

/** A box a label may fill: beside its hole on the plate, or in a row of a rail outside it. */
export type LabelSpot =
  | { readonly box: Box; readonly beside: true }
  | { readonly box: Box; readonly beside: false; readonly side: RailSide; readonly row: number };

const touching = 0.3;
const railGap = 0.9;
const shifts = [0, 1, 2, 3, 4, 5.25, 6.5, 8, 9.5, 11.5, 13.5].flatMap((shift) =>
  shift === 0 ? [0] : [shift, -shift],
);
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

/** The boxes worth trying for one label: touching its hole, and in two rows of the rails above and below the plate and one row
 * at its ends, from straight across outwards. */
export function labelSpots(wish: LabelWish, space: LabelSpace, rails: OutlineRails): LabelSpot[] {
  const { target, width } = wish;
  const { height } = space;
  const [cx, cy] = middle(target);
  const spots = besideSpots(wish, height);
  const onRail = (side: RailSide, box: Box, row: number): void => {
    spots.push({ box, beside: false, side, row });
  };
  for (const shift of shifts) {
    const [x0, x1] = [cx + shift - width / 2, cx + shift + width / 2];
    if (Math.max(x0 - cx, cx - x1) <= labelReach) {
      const [top, bottom] = [rails("above", x0, x1), rails("below", x0, x1)];
      for (const row of [0, 1]) {
        const off = railGap + row * (height + touching);
        if (bottom !== undefined)
          onRail("below", { x0, x1, y0: bottom + off, y1: bottom + off + height }, row);
        if (top !== undefined)
          onRail("above", { x0, x1, y0: top - off - height, y1: top - off }, row);
      }
    }
    const [y0, y1] = [cy + shift - height / 2, cy + shift + height / 2];
    const [left, right] = [rails("left", y0, y1), rails("right", y0, y1)];
    if (left !== undefined && cx - left < labelReach)
      onRail("left", { x0: left - railGap - width, x1: left - railGap, y0, y1 }, 0);
    if (right !== undefined && right - cx < labelReach)
      onRail("right", { x0: right + railGap, x1: right + railGap + width, y0, y1 }, 0);
  }
  return spots;
}
