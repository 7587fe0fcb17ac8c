import type { PlateSide } from "../../model/figure.ts";
import type { LaidHole, LaidPlate } from "../../model/laid-plate.ts";
import { inMm } from "./instrument-part.ts";

const ramp = 2;

const mean = (holes: readonly LaidHole[]): number =>
  holes.reduce((sum, { at }) => sum + at[0], 0) / holes.length;

/** A plate from the side, true mm along it: its ends, how thick it is at each place, and where its head passes into its shaft. */
export type SideProfile = {
  readonly from: number;
  readonly to: number;
  readonly thickAt: (place: number) => number;
  /** Present where head and shaft differ in thickness. */
  readonly neck?: number;
  readonly head: "start" | "end";
};

/** Where and how thick: the head's thickness up to half way between the last hole of the head and the first of the shaft. */
export function sideProfile(plate: LaidPlate, { thickness }: PlateSide): SideProfile {
  const [from, to] = [inMm(plate.bounds.min[0]), inMm(plate.bounds.max[0])];
  const shaft = inMm(thickness.shaft);
  const inHead = plate.holes.filter(({ region }) => region === "head");
  const inShaft = plate.holes.filter(({ region }) => region === "shaft");
  const head = inHead.length > 0 && mean(inHead) > mean(inShaft) ? "end" : "start";
  if (thickness.head === undefined || inHead.length === 0 || inShaft.length === 0)
    return { from, to, thickAt: () => shaft, head };
  const sign = head === "end" ? -1 : 1;
  const reach = (holes: readonly LaidHole[], way: 1 | -1): number =>
    way * Math.max(...holes.map(({ at }) => way * sign * inMm(at[0])));
  const neck = (sign * (reach(inHead, 1) + reach(inShaft, -1))) / 2;
  const wide = inMm(thickness.head);
  const thickAt = (place: number): number => {
    const beyond = sign * (place - neck);
    const part = Math.min(1, Math.max(0, (beyond + ramp) / (2 * ramp)));
    return wide + (shaft - wide) * part;
  };
  return { from, to, thickAt, neck, head };
}
