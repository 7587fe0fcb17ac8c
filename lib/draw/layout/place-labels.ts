import { middle } from "./box.ts";
import { choosePlaces } from "./choose-places.ts";
import { labelBars } from "./label-bars.ts";
import type { LabelSpace, LabelWish, PlacedLabel, Search } from "./label-candidate.ts";
import { addPlaces, plateEdge } from "./label-candidates.ts";
import { LabelPlaces } from "./label-places.ts";

/** What it costs when neighbours of one row have their labels alike, in different lines of one side, or on different sides. */
const unlikeCosts = [0, 0.4, 1.2];

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
  const places = new LabelPlaces();
  for (const wish of along) {
    const others = along.filter((other) => other !== wish);
    if (!addPlaces(places, wish, others, space, edge, search))
      return { labels: [], lost: along.map(({ key }) => key) };
  }
  const owners = places.owners();
  const mates = (item: number, other: number): boolean =>
    along[item]?.row !== undefined && along[item]?.row === along[other]?.row;
  const unlike = (place: number, other: number): number =>
    other < 0 ? 0 : (unlikeCosts[places.unlike(place, other)] ?? 0);
  const chosen = choosePlaces(moves, {
    starts: places.starts,
    owners,
    cost: Float64Array.from(places.costs),
    bars: labelBars(places, owners),
    together: (item, option, chosen) => {
      let cost = 0;
      if (mates(item, item - 1)) cost += unlike(option, chosen[item - 1] ?? -1);
      if (mates(item, item + 1)) cost += unlike(option, chosen[item + 1] ?? -1);
      return cost;
    },
  });
  const placed = along.map(({ key }, item) => ({ key, place: chosen[item] ?? -1 }));
  return {
    labels: placed.flatMap(({ key, place }) => (place < 0 ? [] : [{ key, ...places.at(place) }])),
    lost: placed.filter(({ place }) => place < 0).map(({ key }) => key),
  };
}
