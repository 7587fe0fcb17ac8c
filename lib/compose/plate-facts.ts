import { type Catalogue, known } from "../model/catalogue.ts";
import type { Defined } from "../model/definition.ts";
import type { PlateSide } from "../model/figure.ts";
import type { LaidPlate } from "../model/laid-plate.ts";
import type { DrawnPlate } from "../model/plate.ts";

/** A plate's own drawing facts; a mirrored plate's are those of the plate it mirrors. */
export function drawnPlate(catalogue: Catalogue, id: string): Defined<DrawnPlate> {
  const plate = known(catalogue.plates, id);
  return "mirror_of" in plate ? drawnPlate(catalogue, plate.mirror_of) : plate;
}

/** What a plate shows from the side: how thick it is, and between which of its holes it may be bent. */
export function plateSide(catalogue: Catalogue, plate: string): PlateSide {
  const { thickness, bend_zones } = drawnPlate(catalogue, plate);
  return { thickness, bends: bend_zones.map(({ between }) => between) };
}

/** The bend zones that a plate of this length has, as pairs of holes ("S1–S2, S4–S5"); empty without. */
export function bendWords({ holes }: LaidPlate, { bends }: PlateSide): string {
  const has = (label: string): boolean => holes.some((hole) => hole.label === label);
  return bends
    .filter((pair) => pair.every(has))
    .map((pair) => pair.join("–"))
    .join(", ");
}

/** A plate's side as it must be read from afar. */
export function sideWords(side: LaidPlate["side"]): string {
  return side === "none" ? "No side" : side.toUpperCase();
}

/** Which way the plate lies and which face is up. */
export function orientationLines(catalogue: Catalogue, plate: LaidPlate): readonly string[] {
  const { end_cue, up_face } = drawnPlate(catalogue, plate.plate);
  const where = plate.proximal === "start" ? "left" : "right";
  return [`Towards the body: ${end_cue}, at the ${where} of the picture.`, up_face];
}
