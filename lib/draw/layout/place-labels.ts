import { barsBetween } from "./bars.ts";
import { around, middle, overlaps } from "./box.ts";
import { choosePlaces } from "./choose-places.ts";
import type { LabelSpace, LabelWish, PlacedLabel } from "./label-candidate.ts";
import { candidatesKept, labelCandidates, plateEdge } from "./label-candidates.ts";
import { labelsClash } from "./label-clash.ts";
import { outlineRails } from "./outline-rails.ts";

/** A place for every label, in order along the plate; undefined when the space is too crowded to keep all apart.
 * The sum of costs (leader lengths, slants, second rows) is small and nothing overlaps or crosses. Millimetres. */
export function placeLabels(
  wishes: readonly LabelWish[],
  space: LabelSpace,
): PlacedLabel[] | undefined {
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
    ),
  );
  if (options.some((mine) => mine.length === 0)) return undefined;
  const reaches = options.map((mine) => around(mine.map(({ extent }) => extent)));
  const rivals = (item: number, other: number): boolean => {
    const [a, b] = [reaches[item], reaches[other]];
    return a !== undefined && b !== undefined && overlaps(a, b);
  };
  const chosen = choosePlaces(
    options.map((mine) => mine.map(({ cost }) => cost)),
    barsBetween(options, candidatesKept, rivals, labelsClash),
  );
  return chosen?.flatMap((option, item) => {
    const [wish, place] = [along[item], options[item]?.[option]];
    return wish && place ? [{ key: wish.key, ...place }] : [];
  });
}
