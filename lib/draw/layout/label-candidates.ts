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
  type LabelSpace,
  type LabelWish,
  labelClear,
  labelReach,
  type Search,
} from "./label-candidate.ts";
import { leadersBetween } from "./label-leader.ts";
import type { LabelPlaces } from "./label-places.ts";
import { type LabelSpot, labelSpots } from "./label-spots.ts";
import { within } from "./outline-points.ts";
import type { RailSide } from "./outline-rails.ts";
import { type Stretch, stretchMeetsBox, stretchMeetsStadium } from "./stretch.ts";

const clear = 0.2;
const tellsApart = 1.4;

/** The plate's edge piece by piece. */
export type PlateEdge = readonly Stretch[];

/** Cuts an outline into its pieces. */
export function plateEdge(outline: readonly Spot[]): PlateEdge {
  return outline.map((from, at) => [from, outline[(at + 1) % outline.length] ?? from]);
}

/** What a place on a rail costs: its leader's length and slant, a second row, a side other than below. */
function railCost([[ax, ay], [bx, by]]: Stretch, side: RailSide, row: number): number {
  const [dx, dy] = [Math.abs(bx - ax), Math.abs(by - ay)];
  const slant = side === "above" || side === "below" ? dx : dy;
  return (
    1 +
    Math.sqrt(dx * dx + dy * dy) * 0.3 +
    slant * slant * 0.06 +
    row * 1.5 +
    (side === "below" ? 0 : side === "above" ? 1 : 0.8)
  );
}

/** What a place on the plate costs: more than a short leader, least when centred below its hole. */
function besideCost(box: Box, target: Box): number {
  const [cx, cy] = middle(target);
  const [x, y] = middle(box);
  return 4 + Math.min(Math.abs(x - cx), Math.abs(y - cy)) * 0.12 + (y > cy + 1 ? 0 : 0.4);
}

function extentOf(box: Box, leader?: Stretch): Box {
  if (leader === undefined) return grown(box, labelClear);
  const [[ax, ay], [bx, by]] = leader;
  const all = {
    x0: Math.min(box.x0, ax, bx),
    y0: Math.min(box.y0, ay, by),
    x1: Math.max(box.x1, ax, bx),
    y1: Math.max(box.y1, ay, by),
  };
  return grown(all, labelClear);
}

/** Adds the admissible places of one label among the holes; none overlaps a hole, crosses the plate's edge or leaves the area, and no
 * leader touches another hole. Tells whether there are any. */
export function addPlaces(
  places: LabelPlaces,
  wish: LabelWish,
  others: readonly LabelWish[],
  space: LabelSpace,
  edge: PlateEdge,
  search: Search,
): boolean {
  const { target } = wish;
  const centre = boxAround(wish.at, 0, 0);
  const reached = boxAround(
    middle(target),
    2 * (labelReach + wish.width + tellsApart),
    2 * (labelReach + space.height + tellsApart),
  );
  const nearby = others.filter((other) => overlaps(other.target, reached));
  const near = nearby.map((other) => other.target);
  const holes = nearby.filter((other) => other.isHole).map((other) => other.target);
  const nearEdge = edge.filter((piece) => stretchMeetsBox(piece, reached));
  const addBeside = (box: Box): void => {
    const apart = gapBetween(box, target) + tellsApart;
    if (near.some((other) => gapBetween(box, other) < apart)) return;
    const cost = besideCost(box, target);
    places.add({ box, side: "beside", line: 0, cost, extent: extentOf(box) });
  };
  const blocks = space.blocks.filter((block) => overlaps(block, reached));
  const isFree = (leader: Stretch): boolean =>
    !holes.some((other) => stretchMeetsStadium(leader, other, clear)) &&
    (space.crossing || !blocks.some((block) => stretchMeetsBox(leader, block)));
  const addRailed = (box: Box, side: RailSide, line: number): void => {
    for (const leader of leadersBetween(target, box)) {
      if (!isFree(leader)) continue;
      const cost = railCost(leader, side, line);
      places.add({ box, side, line, leader, cost, extent: extentOf(box, leader) });
      if (search === "likely") return;
    }
  };
  const admissible = ({ box, beside }: LabelSpot): boolean =>
    holds(space.area, box) &&
    gapBetween(centre, box) <= labelReach &&
    !overlaps(box, target, clear) &&
    !near.some((other) => overlaps(box, other, clear)) &&
    !blocks.some((block) => overlaps(box, block)) &&
    (!beside ||
      (wish.isHole &&
        within(space.outline, middle(box)) &&
        !nearEdge.some((piece) => stretchMeetsBox(piece, box))));
  for (const spot of labelSpots(wish, space, search)) {
    if (!admissible(spot)) continue;
    if (spot.beside) addBeside(spot.box);
    else addRailed(spot.box, spot.side, spot.row);
  }
  return places.end();
}
