import { around, overlaps } from "./box.ts";
import { chooseCandidates } from "./choose-candidates.ts";
import type { LabelSpace, LabelWish, PlacedLabel } from "./label-candidate.ts";
import { labelCandidates, plateEdge } from "./label-candidates.ts";
import { labelsClash } from "./label-clash.ts";

/** A place for every label, in the order of the wishes; undefined when the space is too crowded to keep all apart.
 * The sum of costs (leader lengths, edges crossed, off-centre) is small and nothing overlaps or crosses. Millimetres. */
export function placeLabels(
  wishes: readonly LabelWish[],
  space: LabelSpace,
): PlacedLabel[] | undefined {
  const edge = plateEdge(space.outline);
  const options = wishes.map((wish) =>
    labelCandidates(
      wish,
      wishes.filter((other) => other !== wish).map((other) => other.target),
      space,
      edge,
    ),
  );
  if (options.some((mine) => mine.length === 0)) return undefined;
  const reaches = options.map((mine) => around(mine.map((candidate) => candidate.extent)));
  const { chosen, clashes } = chooseCandidates({
    costs: options.map((mine) => mine.map((candidate) => candidate.cost)),
    rivals: reaches.map((mine, item) =>
      reaches.flatMap((other, at) => (at !== item && overlaps(mine, other) ? [at] : [])),
    ),
    clash: (item, option, other, otherOption) => {
      const [a, b] = [options[item]?.[option], options[other]?.[otherOption]];
      return a !== undefined && b !== undefined && labelsClash(a, b);
    },
  });
  if (clashes > 0) return undefined;
  return wishes.flatMap((wish, at) => {
    const place = options[at]?.[chosen[at] ?? 0];
    return place ? [{ key: wish.key, ...place }] : [];
  });
}
