import { type Catalogue, known } from "../../model/catalogue.ts";
import type { LookAlike } from "../../model/chain.ts";
import type { LaidPlate } from "../../model/laid-plate.ts";
import { mm } from "../../model/measure.ts";
import type { DrawnPlate } from "../../model/plate.ts";
import { drawnPlate } from "../drawn-plate.ts";
import { pairs } from "./pairs.ts";
import { type Feature, told } from "./told.ts";

const isNear = (a: number, b: number): boolean => Math.abs(a - b) * 10 <= Math.max(a, b);
const width = ({ bounds }: LaidPlate): number => bounds.max[1] - bounds.min[1];

const features: readonly Feature<DrawnPlate>[] = [
  {
    value: ({ thickness }) => `${mm(thickness.shaft)} mm`,
    words: (thickness) => `thickness ${thickness}`,
  },
  { value: ({ mark }) => `"${mark}"`, words: (mark) => `etched ${mark}` },
];

/** Plates of one system that in some length have nearly the same outline, within 10 %, and differ in stiffness. */
export function plateLookAlikes(
  catalogue: Catalogue,
  system: string,
  plates: readonly LaidPlate[],
): readonly LookAlike[] {
  const drawn = ({ plate }: LaidPlate): DrawnPlate =>
    drawnPlate(catalogue, known(catalogue.plates, plate));
  return pairs(plates.filter((plate) => plate.system === system))
    .filter(
      ([a, b]) =>
        drawn(a).stiffness !== drawn(b).stiffness &&
        isNear(a.length, b.length) &&
        isNear(width(a), width(b)),
    )
    .map(([a, b]) => ({
      a: a.plate,
      b: b.plate,
      what: "plate",
      ...told(features, drawn(a), drawn(b)),
    }));
}
