import type { PlateSide } from "../../model/figure.ts";
import type { LaidPlate } from "../../model/laid-plate.ts";
import { plateNeck } from "../layout/plate-neck.ts";
import { inMm } from "./instrument-part.ts";

const ramp = 2;

/** A plate from the side, true mm along it: its ends, how thick it is at each place, and where its head passes into its shaft. */
export type SideProfile = {
  readonly from: number;
  readonly to: number;
  readonly thickAt: (place: number) => number;
  /** Present where head and shaft differ in thickness. */
  readonly neck?: number;
  readonly head: "start" | "end";
};

/** Where and how thick: the head's thickness up to its neck. */
export function sideProfile(plate: LaidPlate, { thickness }: PlateSide): SideProfile {
  const [from, to] = [inMm(plate.bounds.min[0]), inMm(plate.bounds.max[0])];
  const shaft = inMm(thickness.shaft);
  const found = plateNeck(plate);
  const head = found?.head ?? "start";
  if (thickness.head === undefined || found === undefined)
    return { from, to, thickAt: () => shaft, head };
  const sign = head === "end" ? -1 : 1;
  const neck = inMm(found.at);
  const wide = inMm(thickness.head);
  const thickAt = (place: number): number => {
    const beyond = sign * (place - neck);
    const part = Math.min(1, Math.max(0, (beyond + ramp) / (2 * ramp)));
    return wide + (shaft - wide) * part;
  };
  return { from, to, thickAt, neck, head };
}
