import { middle } from "./box.ts";
import { choosePlaces } from "./choose-places.ts";
import { labelBars, rivalsAmong, startsOf } from "./label-bars.ts";
import type {
  LabelCandidate,
  LabelSpace,
  LabelWish,
  PlacedLabel,
  Search,
} from "./label-candidate.ts";
import { labelCandidates, plateEdge } from "./label-candidates.ts";

/** What it costs when neighbours of one row have their labels on different sides, or in different lines of one side. */
const [otherSide, otherLine] = [1.2, 0.4];

/** How closely places are looked for, and how many moves are made to part labels that clash. */
export type Effort = { readonly search: Search; readonly moves: number };

/** Labels in their places, and the keys of those that found none. */
export type PlacedLabels = {
  readonly labels: readonly PlacedLabel[];
  readonly lost: readonly string[];
};

/** A place for every label that has one: nothing overlaps or crosses, and the sum of costs (leader lengths, slants, far rows,
 * neighbours of one row on different sides) is small. Millimetres. */
export function placeLabels(
  wishes: readonly LabelWish[],
  space: LabelSpace,
  { search, moves }: Effort,
): PlacedLabels {
  const edge = plateEdge(space.outline);
  const along = [...wishes].sort((a, b) => middle(a.target)[0] - middle(b.target)[0]);
  const options: LabelCandidate[][] = [];
  for (const wish of along) {
    const others = along.filter((other) => other !== wish);
    const places = labelCandidates(wish, others, space, edge, search);
    if (places.length === 0) return { labels: [], lost: along.map(({ key }) => key) };
    options.push(places);
  }
  const all = options.flat();
  const rivals = rivalsAmong(options);
  const mates = (item: number, other: number): boolean =>
    along[item]?.row !== undefined && along[item]?.row === along[other]?.row;
  const chosen = choosePlaces(moves, {
    starts: startsOf(options),
    rivals,
    cost: new Float64Array(all.map(({ cost }) => cost)),
    bars: labelBars(options, rivals),
    together: (item, option, chosen) => {
      let cost = 0;
      for (const other of [item - 1, item + 1])
        if (mates(item, other)) cost += unlike(all[option], all[chosen[other] ?? -1]);
      return cost;
    },
  });
  const placed = along.map(({ key }, item) => ({ key, place: all[chosen[item] ?? -1] }));
  return {
    labels: placed.flatMap(({ key, place }) => (place ? [{ key, ...place }] : [])),
    lost: placed.filter(({ place }) => place === undefined).map(({ key }) => key),
  };
}

function unlike(a: LabelCandidate | undefined, b: LabelCandidate | undefined): number {
  if (a === undefined || b === undefined) return 0;
  return a.side !== b.side ? otherSide : a.line !== b.line ? otherLine : 0;
}
