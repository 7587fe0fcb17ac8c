import { type Catalogue, known } from "../../model/catalogue.ts";
import type { LaidPlate } from "../../model/laid-plate.ts";
import { mm } from "../../model/measure.ts";
import type { DrawnPlate } from "../../model/plate.ts";
import { drawnPlate } from "../drawn-plate.ts";
import { inIdOrder } from "../in-id-order.ts";
import { pairs } from "./pairs.ts";
import { type Feature, type Pair, told } from "./told.ts";

const isNear = (a: number, b: number): boolean => Math.abs(a - b) * 10 <= Math.max(a, b);
const width = ({ bounds }: LaidPlate): number => bounds.max[1] - bounds.min[1];

const etched: Feature<{ readonly mark: string }> = {
  value: ({ mark }) => `"${mark}"`,
  words: (mark) => `etched ${mark}`,
};

const features: readonly Feature<DrawnPlate>[] = [
  {
    value: ({ thickness }) => `${mm(thickness.shaft)} mm`,
    words: (thickness) => `thickness ${thickness}`,
  },
  etched,
];

/** The two sides of a plate: turned over, one passes for the other. */
function sidesAlike({ plates }: Catalogue, system: string): readonly Pair[] {
  return inIdOrder(plates).flatMap((plate) => {
    const other = "mirror_of" in plate ? known(plates, plate.mirror_of) : undefined;
    if (plate.system !== system || other === undefined) return [];
    return [{ a: other.id, b: plate.id, what: "plate", ...told([etched], other, plate) }];
  });
}

/** Plates of one system that in some length have nearly the same outline, within 10 %, and differ in stiffness; and the two sides of one plate. */
export function plateLookAlikes(
  catalogue: Catalogue,
  system: string,
  plates: readonly LaidPlate[],
): readonly Pair[] {
  const drawn = ({ plate }: LaidPlate): DrawnPlate =>
    drawnPlate(catalogue, known(catalogue.plates, plate));
  const twins = pairs(plates.filter((plate) => plate.system === system))
    .filter(
      ([a, b]) =>
        drawn(a).stiffness !== drawn(b).stiffness &&
        isNear(a.length, b.length) &&
        isNear(width(a), width(b)),
    )
    .map(
      ([a, b]): Pair => ({
        a: a.plate,
        b: b.plate,
        what: "plate",
        ...told(features, drawn(a), drawn(b)),
      }),
    );
  return [...twins, ...sidesAlike(catalogue, system)];
}
