import { mm, wholeMm } from "../../model/measure.ts";
import { rackLengths } from "../../model/rack-lengths.ts";
import type { Recipe } from "../../model/recipe.ts";
import type { Criteria } from "./ask.ts";

/** True where the threaded sleeve is still in the hole when the gauge is asked for. */
function measuresThroughSleeve({ steps }: Recipe): boolean {
  const gauge = steps.findIndex(({ uses, also }) =>
    [uses, ...also].some((query) => query?.kind === "depth-gauge"),
  );
  const before = steps.slice(0, gauge);
  const turnedIn = before.findLastIndex(({ uses, also }) =>
    [uses, ...also].some((query) => query?.kind === "threaded-sleeve"),
  );
  return turnedIn >= 0 && !before.slice(turnedIn).some(({ verb }) => verb === "take-out");
}

/** A depth gauge is found by a hook that passes the pilot hole, a scale that covers the whole rack, and where it seats. */
export const depthGaugeCriteria: Criteria<"depth-gauge"> = {
  hook: ({ hook }, { screw: { pilot } }) =>
    hook < pilot ? undefined : `hook ${mm(hook)} does not pass the hole of drill ${mm(pilot)}`,
  scale: ({ scale: { from, to } }, { screw }) => {
    const lengths = rackLengths(screw);
    const [shortest, longest] = [lengths[0] ?? 0, lengths.at(-1) ?? 0];
    if (from <= shortest && to >= longest) return undefined;
    return `scale ${wholeMm(from)} to ${wholeMm(to)} does not cover the rack, ${wholeMm(shortest)} to ${wholeMm(longest)}`;
  },
  seat: ({ seat }, { recipe }) =>
    seat === "sleeve" && !measuresThroughSleeve(recipe)
      ? "seats on a sleeve; here the hole itself is measured"
      : undefined,
};
