import { barsBetween } from "./bars.ts";
import { around, middle, overlaps } from "./box.ts";
import { choosePlaces } from "./choose-places.ts";
import type { LabelCandidate, LabelSpace, LabelWish, PlacedLabel } from "./label-candidate.ts";
import { labelCandidates, plateEdge } from "./label-candidates.ts";
import { labelsClash } from "./label-clash.ts";
import { outlineRails } from "./outline-rails.ts";

/** Which labels are placed first: those at the plate's start, or those with the fewest places. */
export type LabelOrder = "along" | "scarce";

/** How many places of each label are weighed: more when the first order has found nothing. */
const places: Readonly<Record<LabelOrder, number>> = { along: 64, scarce: 160 };

/** A place for every label, found in the order given; undefined when the space is too crowded to keep all apart.
 * The sum of costs (leader lengths, slants, second rows) is small and nothing overlaps or crosses. Millimetres. */
export function placeLabels(
  wishes: readonly LabelWish[],
  space: LabelSpace,
  order: LabelOrder,
): PlacedLabel[] | undefined {
  const most = places[order];
  const edge = plateEdge(space.outline);
  const rails = outlineRails(space.outline);
  const along = [...wishes].sort((a, b) => middle(a.target)[0] - middle(b.target)[0]);
  const options = along.map((wish) =>
    labelCandidates(
      wish,
      along.filter((other) => other !== wish).map(({ target }) => target),
      space,
      edge,
      rails,
      most,
    ),
  );
  if (options.some((mine) => mine.length === 0)) return undefined;
  if (order === "scarce") {
    const count = (at: number): number => options[at]?.length ?? 0;
    const scarce = [...along.keys()].sort((a, b) => count(a) - count(b));
    return chosenAmong(
      scarce.flatMap((at) => along[at] ?? []),
      scarce.map((at) => options[at] ?? []),
      most,
    );
  }
  return chosenAmong(along, options, most);
}

function chosenAmong(
  wishes: readonly LabelWish[],
  options: readonly (readonly LabelCandidate[])[],
  most: number,
): PlacedLabel[] | undefined {
  const reaches = options.map((mine) => around(mine.map(({ extent }) => extent)));
  const rivals = (item: number, other: number): boolean => {
    const [a, b] = [reaches[item], reaches[other]];
    return a !== undefined && b !== undefined && overlaps(a, b);
  };
  const chosen = choosePlaces(
    options.map((mine) => mine.map(({ cost }) => cost)),
    barsBetween(options, most, rivals, labelsClash),
  );
  return chosen?.flatMap((option, item) => {
    const [wish, place] = [wishes[item], options[item]?.[option]];
    return wish && place ? [{ key: wish.key, ...place }] : [];
  });
}
