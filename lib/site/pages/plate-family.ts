import { type Catalogue, known } from "../../model/catalogue.ts";
import type { Defined } from "../../model/definition.ts";
import type { Plate } from "../../model/plate.ts";

/** The family of a plate; a mirrored plate's is that of the plate it mirrors. */
export function plateFamily(catalogue: Catalogue, plate: Defined<Plate>): string {
  return "mirror_of" in plate
    ? plateFamily(catalogue, known(catalogue.plates, plate.mirror_of))
    : plate.family;
}
