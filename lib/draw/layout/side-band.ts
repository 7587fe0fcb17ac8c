import type { PlateSide } from "../../model/figure.ts";
import type { LaidPlate } from "../../model/laid-plate.ts";

/** What stands above and below a plate seen from the side, millimetres: how far hole axes reach beyond it, the row of words beneath, clear space. */
export const sideRoom = { axis: 1.6, words: 5.1, clear: 1.2 } as const;

/** How thick a plate is at its thickest, micrometres. */
const thickest = ({ thickness }: PlateSide): number =>
  Math.max(thickness.shaft, thickness.head ?? 0);

/** How far a plate seen from the side reaches below its bone side, mm at a scale. */
const below = ({ hooks }: LaidPlate, scale: number): number =>
  (hooks ? (hooks.depth * scale) / 1000 : sideRoom.axis) + 0.4;

/** The height of a plate's view from the side with its words, mm at a scale. */
export function sideBandHeight(plate: LaidPlate, side: PlateSide, scale: number): number {
  const thick = (thickest(side) * scale) / 1000;
  return sideRoom.clear + sideRoom.axis + thick + below(plate, scale) + sideRoom.words;
}

/** Where the bone side and the row of words of a view from the side lie, mm, when it begins at `top`. */
export function sideBand(
  plate: LaidPlate,
  side: PlateSide,
  scale: number,
  top: number,
): { readonly base: number; readonly words: number } {
  const base = top + sideRoom.clear + sideRoom.axis + (thickest(side) * scale) / 1000;
  return { base, words: base + below(plate, scale) };
}
