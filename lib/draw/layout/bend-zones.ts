import type { LaidPlate } from "../../model/laid-plate.ts";
import type { Um } from "../../model/measure.ts";
import { zoneSize } from "./zone-size.ts";

/** A stretch of a plate that may be bent, between the rims of two of its holes, micrometres along it. */
export type BendZone = {
  readonly between: readonly [string, string];
  readonly from: Um;
  readonly to: Um;
};

/** The stretches between pairs of holes; a pair that this length of the plate lacks has none. */
export function bendZones(
  { holes }: LaidPlate,
  pairs: readonly (readonly [string, string])[],
): readonly BendZone[] {
  return pairs.flatMap(([one, other]) => {
    const found = holes.filter(({ label }) => label === one || label === other);
    const [left, right] = found.toSorted((a, b) => a.at[0] - b.at[0]);
    if (left === undefined || right === undefined) return [];
    const from = Math.max(...left.zones.map((zone) => zone.at[0] + zoneSize(zone).along / 2));
    const to = Math.min(...right.zones.map((zone) => zone.at[0] - zoneSize(zone).along / 2));
    return from < to ? [{ between: [left.label, right.label] as const, from, to }] : [];
  });
}
