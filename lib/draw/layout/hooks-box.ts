import type { LaidPlate } from "../../model/laid-plate.ts";
import type { Box } from "./box.ts";
import type { FittedPlate } from "./fit-plate.ts";

/** How wide each hook is drawn where so many share a spread, mm of metal. */
export const hookWidth = (count: number, spread: number): number =>
  Math.min(2.2, (spread / Math.max(1, count)) * 0.55);

/** The box of a plate's hooks on the figure, to their outer edges, undefined for a plate without. */
export function hooksBox(plate: LaidPlate, fitted: FittedPlate): Box | undefined {
  if (!plate.hooks) return undefined;
  const { at, count, depth, spread } = plate.hooks;
  const { x0, x1, y0, y1 } = fitted.box;
  const long = fitted.lengthOf(depth);
  const width = hookWidth(count, spread / 1000) * 1000;
  const half = fitted.lengthOf((count === 1 ? 0 : spread / 2) + width / 2);
  const y = (y0 + y1) / 2;
  return at === "start"
    ? { x0, x1: x0 + long, y0: y - half, y1: y + half }
    : { x0: x1 - long, x1, y0: y - half, y1: y + half };
}
