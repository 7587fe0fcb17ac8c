import { type Catalogue, known } from "../model/catalogue.ts";
import type { DrawnPlate, Plate } from "../model/plate.ts";

/** The plate that is drawn: itself, or the one it mirrors. */
export function drawnPlate(catalogue: Catalogue, plate: Plate): DrawnPlate {
  const drawn = "mirror_of" in plate ? known(catalogue.plates, plate.mirror_of) : plate;
  if ("mirror_of" in drawn) throw new Error("A mirrored plate mirrors a drawn one");
  return drawn;
}
