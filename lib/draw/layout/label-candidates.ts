import {
  type Box,
  boxAround,
  gapBetween,
  grown,
  holds,
  middle,
  overlaps,
  type Spot,
} from "./box.ts";
import {
  type LabelCandidate,
  type LabelSpace,
  type LabelWish,
  labelClear,
  labelReach,
} from "./label-candidate.ts";
import { leadersBetween } from "./label-leader.ts";
import { labelSpots } from "./label-spots.ts";
import { within } from "./outline-points.ts";
import { type Stretch, stretchMeetsBox, stretchMeetsStadium } from "./stretch.ts";

const kept = 100;
const sameSpot = 1.1;
const clear = 0.2;
const nearEnough = 1.1;
const tellsApart = 1.4;

/** The plate's edge piece by piece. */
export type PlateEdge = readonly Stretch[];

/** Cuts an outline into its pieces. */
export function plateEdge(outline: readonly Spot[]): PlateEdge {
  return outline.map((from, at) => [from, outline[(at + 1) % outline.length] ?? from]);
}

/** What a place costs: length of leader, crossing the plate's edge, lying on the plate, standing off centre, standing above. */
function costOf(
  box: Box,
  wish: LabelWish,
  space: LabelSpace,
  crosses: boolean,
  leader: number,
): number {
  const [cx, cy] = middle(wish.target);
  const [x, y] = middle(box);
  return (
    (leader > 0 ? 1 + leader * 0.3 : 0) +
    (crosses ? 9 : within(space.outline, [x, y]) ? 3 : 0) +
    Math.abs(x - cx) * 0.12 +
    (y < cy ? 0.4 : 0) +
    (Math.abs(y - cy) < 0.5 ? 0.3 : 0)
  );
}

function extentOf(box: Box, leader?: Stretch): Box {
  const [[ax, ay], [bx, by]] = leader ?? [middle(box), middle(box)];
  const all = {
    x0: Math.min(box.x0, ax, bx),
    y0: Math.min(box.y0, ay, by),
    x1: Math.max(box.x1, ax, bx),
    y1: Math.max(box.y1, ay, by),
  };
  return grown(all, labelClear);
}

/** Every admissible place of one label among the holes, cheapest first; none overlaps a hole or leaves the area. */
export function labelCandidates(
  wish: LabelWish,
  others: readonly Box[],
  space: LabelSpace,
  edge: PlateEdge,
): LabelCandidate[] {
  const near = others.filter(
    (other) => gapBetween(other, wish.target) < labelReach + wish.width + space.height,
  );
  const middleBox = boxAround(middle(wish.target), 0, 0);
  const found: LabelCandidate[] = [];
  for (const spot of labelSpots(wish, space)) {
    const box = boxAround(spot, wish.width, space.height);
    if (!holds(space.area, box) || gapBetween(middleBox, box) > labelReach) continue;
    if (overlaps(box, wish.target)) continue;
    if (near.some((other) => overlaps(box, other, clear))) continue;
    const crosses = edge.some((piece) => stretchMeetsBox(piece, box));
    if (crosses && !space.mayCross) continue;
    const own = gapBetween(box, wish.target);
    if (own <= nearEnough && near.every((other) => gapBetween(box, other) >= own + tellsApart)) {
      found.push({ box, cost: costOf(box, wish, space, crosses, 0), extent: extentOf(box) });
      continue;
    }
    const free = leadersBetween(wish.target, box).find(
      ({ leader }) => !near.some((other) => stretchMeetsStadium(leader, other, clear)),
    );
    if (free === undefined) continue;
    const { leader, bar } = free;
    const length = Math.hypot(leader[1][0] - leader[0][0], leader[1][1] - leader[0][1]);
    found.push({
      box,
      leader,
      bar,
      cost: costOf(box, wish, space, crosses, length),
      extent: extentOf(box, leader),
    });
  }
  return varied(found.sort((a, b) => a.cost - b.cost));
}

/** The cheapest places, none close beside a cheaper one. */
function varied(sorted: readonly LabelCandidate[]): LabelCandidate[] {
  const chosen: LabelCandidate[] = [];
  for (const candidate of sorted) {
    const { x0, y0 } = candidate.box;
    const near = chosen.some(
      ({ box }) => Math.abs(box.x0 - x0) < sameSpot && Math.abs(box.y0 - y0) < sameSpot,
    );
    if (!near) chosen.push(candidate);
    if (chosen.length === kept) break;
  }
  return chosen;
}
