import type { Figure } from "../model/figure.ts";
import type { LaidPlate } from "../model/laid-plate.ts";

/** The laid plate that a drawn map says it shows. */
export function mappedPlate({ svg }: Figure, plates: readonly LaidPlate[]): LaidPlate | undefined {
  const shown = /data-plate="([^"]*)"/.exec(svg)?.[1];
  return plates.find(({ id }) => id === shown);
}

/** The values of one data attribute in a drawing, in order, repeats kept. */
export function dataValues({ svg }: Figure, name: "hole" | "label" | "word"): readonly string[] {
  return [...svg.matchAll(new RegExp(`data-${name}="([^"]*)"`, "g"))].map(
    ([, value]) => value ?? "",
  );
}
