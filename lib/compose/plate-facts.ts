import { type Catalogue, known } from "../model/catalogue.ts";
import type { Defined } from "../model/definition.ts";
import type { LaidPlate } from "../model/laid-plate.ts";
import type { DrawnPlate } from "../model/plate.ts";

/** A plate's own drawing facts; a mirrored plate's are those of the plate it mirrors. */
export function drawnPlate(catalogue: Catalogue, id: string): Defined<DrawnPlate> {
  const plate = known(catalogue.plates, id);
  return "mirror_of" in plate ? drawnPlate(catalogue, plate.mirror_of) : plate;
}

/** A plate's side as it must be read from afar. */
export function sideWords(side: LaidPlate["side"]): string {
  return side === "none" ? "No side" : side.toUpperCase();
}

/** A plate's name with its side and the number of its holes, in words. */
export function plateTitle({ name, side, holesInRow }: LaidPlate): string {
  const sided = side === "none" || name.toLowerCase().includes(side) ? name : `${name}, ${side}`;
  const told = new RegExp(`\\b${holesInRow} holes\\b`).test(sided);
  return told ? sided : `${sided}, ${holesInRow} ${holesInRow === 1 ? "hole" : "holes"}`;
}

/** Which way the plate lies and which face is up. */
export function orientationLines(catalogue: Catalogue, plate: LaidPlate): readonly string[] {
  const { end_cue, up_face } = drawnPlate(catalogue, plate.plate);
  const where = plate.proximal === "start" ? "left" : "right";
  return [`Towards the body: ${end_cue}, at the ${where} of the picture.`, up_face];
}

/** Hole labels as a span where they follow one another ("S1–S5"), else as a list ("S1, S4"). */
export function labelSpan(labels: readonly string[]): string {
  const runs: string[][] = [];
  for (const label of labels) {
    const last = runs.at(-1)?.at(-1);
    const follows =
      last !== undefined &&
      last[0] === label[0] &&
      Number(label.slice(1)) === Number(last.slice(1)) + 1;
    if (follows) runs.at(-1)?.push(label);
    else runs.push([label]);
  }
  return runs
    .map((run) => (run.length > 2 ? `${run[0]}–${run.at(-1)}` : run.join(", ")))
    .join(", ");
}
