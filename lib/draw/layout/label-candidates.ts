import { type Box, boxAround, gapBetween, grown, holds, middle, overlaps } from "./box.ts";
import { type LabelCandidate, type LabelSpace, type LabelWish, labelReach } from "./label-candidate.ts";
import { leaderBetween } from "./label-leader.ts";
import { labelSpots } from "./label-spots.ts";
import { within } from "./outline-points.ts";
import { stretchMeetsBox } from "./stretch.ts";

const kept = 64;
const clear = 0.2;
const nearEnough = 1.1;
const tellsApart = 0.8;

/** What a place costs: length of leader, crossing the plate's edge, lying on the plate, standing off centre, standing above. */
function costOf(box: Box, wish: LabelWish, space: LabelSpace, leader: number): number {
  const [cx, cy] = middle(wish.target);
  const [x, y] = middle(box);
  const corners = [[box.x0, box.y0], [box.x1, box.y0], [box.x0, box.y1], [box.x1, box.y1]] as const;
  const inside = corners.filter((corner) => within(space.outline, corner)).length;
  const crosses =
    (inside > 0 && inside < 4) ||
    space.outline.some((from, at) => stretchMeetsBox([from, space.outline[(at + 1) % space.outline.length] ?? from], box));
  return (
    (leader > 0 ? 1 + leader * 0.3 : 0) +
    (crosses ? 9 : inside === 4 ? 3 : 0) +
    Math.abs(x - cx) * 0.12 +
    (y < cy ? 0.4 : 0) +
    (Math.abs(y - cy) < 0.5 ? 0.3 : 0)
  );
}

/** Every admissible place of one label among the holes, cheapest first; none overlaps a hole or leaves the area. */
export function labelCandidates(wish: LabelWish, others: readonly Box[], space: LabelSpace): LabelCandidate[] {
  const middleBox = boxAround(middle(wish.target), 0, 0);
  const found: LabelCandidate[] = [];
  for (const spot of labelSpots(wish, space)) {
    const box = boxAround(spot, wish.width, space.height);
    if (!holds(space.area, box) || gapBetween(middleBox, box) > labelReach) continue;
    if (overlaps(box, wish.target)) continue;
    const roomy = grown(box, clear);
    if (others.some((other) => overlaps(roomy, other)) || space.keepOut.some((other) => overlaps(roomy, other))) continue;
    const own = gapBetween(box, wish.target);
    const nearest = Math.min(Infinity, ...others.map((other) => gapBetween(box, other)));
    if (own <= nearEnough && nearest >= own + tellsApart) {
      found.push({ box, cost: costOf(box, wish, space, 0) });
      continue;
    }
    const { leader, bar } = leaderBetween(wish.target, box);
    const blocked = [...others, ...space.keepOut].some((other) => stretchMeetsBox(leader, grown(other, clear)));
    if (blocked) continue;
    const length = Math.hypot(leader[1][0] - leader[0][0], leader[1][1] - leader[0][1]);
    found.push({ box, leader, bar, cost: costOf(box, wish, space, length) });
  }
  return found.sort((a, b) => a.cost - b.cost).slice(0, kept);
}
