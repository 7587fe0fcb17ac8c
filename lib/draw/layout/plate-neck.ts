import type { LaidHole, LaidPlate } from "../../model/laid-plate.ts";
import type { Um } from "../../model/measure.ts";
import { zoneSize } from "./zone-size.ts";

/** Where a plate's head passes into its shaft, micrometres along it, and at which end the head is. */
export type PlateNeck = { readonly at: Um; readonly head: "start" | "end" };

const mean = (holes: readonly LaidHole[]): number =>
  holes.reduce((sum, { at }) => sum + at[0], 0) / holes.length;

/** The farthest rim of some holes along the plate, in direction `way`. */
const reach = (holes: readonly LaidHole[], way: 1 | -1): Um =>
  way *
  Math.max(
    ...holes.flatMap(({ zones }) =>
      zones.map((zone) => way * zone.at[0] + zoneSize(zone).along / 2),
    ),
  );

/** Half way between the last rim of the head's holes and the first of the shaft's; undefined for a plate without both. */
export function plateNeck({ holes }: LaidPlate): PlateNeck | undefined {
  const inHead = holes.filter(({ region }) => region === "head");
  const inShaft = holes.filter(({ region }) => region === "shaft");
  if (inHead.length === 0 || inShaft.length === 0) return undefined;
  const head = mean(inHead) > mean(inShaft) ? "end" : "start";
  const way = head === "start" ? 1 : -1;
  return { at: (reach(inHead, way) + reach(inShaft, way === 1 ? -1 : 1)) / 2, head };
}
