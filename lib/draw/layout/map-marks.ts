import type { PlateSide } from "../../model/figure.ts";
import type { LaidPlate } from "../../model/laid-plate.ts";
import { bendZones } from "./bend-zones.ts";
import type { FittedPlate } from "./fit-plate.ts";
import type { LaidMap } from "./laid-map.ts";
import type { MapWords } from "./map-words.ts";
import type { OutlineRails } from "./outline-rails.ts";
import { plateNeck } from "./plate-neck.ts";
import type { RegionWish } from "./region-forms.ts";

/** Half the gap between the lines that name two regions. */
const neckGap = 0.9;

/** The stretches that may be bent, each as the box of that part of the plate. */
export function bendBoxes(
  plate: LaidPlate,
  fitted: FittedPlate,
  rails: OutlineRails,
  side: PlateSide | undefined,
): LaidMap["bends"] {
  return bendZones(plate, side?.bends ?? []).map(({ between, from, to }) => {
    const [x0, x1] = [fitted.project([from, 0])[0], fitted.project([to, 0])[0]];
    const box = { x0, x1, y0: rails("above", x0, x1), y1: rails("below", x0, x1) };
    return { name: between.join(" to "), box };
  });
}

/** The stretches of a plate that are named: its head up to its neck, and its shaft from there on. */
export function regionWishes(plate: LaidPlate, fitted: FittedPlate, words: MapWords): RegionWish[] {
  const neck = plateNeck(plate);
  if (neck === undefined) return [];
  const [x] = fitted.project([neck.at, 0]);
  const { min, max } = plate.bounds;
  const [start, end] = [fitted.project(min)[0], fitted.project(max)[0]];
  return words.regions.map(({ region, words: forms }) =>
    (region === "head") === (neck.head === "start")
      ? { region, from: start, to: x - neckGap, outer: -1, words: forms }
      : { region, from: x + neckGap, to: end, outer: 1, words: forms },
  );
}
