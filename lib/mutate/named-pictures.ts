import type { Figure, Pictures } from "../model/figure.ts";
import type { LaidPlate } from "../model/laid-plate.ts";

const picture = (id: string, svg = ""): Figure => ({
  id,
  svg,
  title: "",
  description: "",
  width: 100,
  height: 40,
});

/** A plate map that holds its marks and no lines: what it names is what a drawn map names. */
function plateMap(id: string, plate: LaidPlate): Figure {
  const labels = plate.holes.map(({ label }) => `<g data-hole="${label}" data-label="${label}"/>`);
  const words = ["side", "proximal", "face"].map((word) => `<g data-word="${word}"/>`);
  return picture(id, `<svg data-plate="${plate.id}">${[...words, ...labels].join("")}</svg>`);
}

/** About as wide as the typeface; what a mutant cuts off must not hang on a letter. */
const textWidth = (text: string, size: number): number => text.length * 0.5 * size;

/** Pictures that are named and never drawn, whatever kinds of picture there are, so that sheets are composed in milliseconds. */
export const namedPictures = new Proxy({ plateMap, textWidth } as unknown as Pictures, {
  get: (own, kind) => Reflect.get(own, kind) ?? ((id: string): Figure => picture(id)),
});
