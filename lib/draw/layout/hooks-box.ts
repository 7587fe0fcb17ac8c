import type { LaidPlate } from "../../model/laid-plate.ts";
import type { Box } from "./box.ts";
import type { FittedPlate } from "./fit-plate.ts";

/** The box of a plate's hooks on the figure, undefined for a plate without. */
export function hooksBox(plate: LaidPlate, fitted: FittedPlate): Box | undefined {
  if (!plate.hooks) return undefined;
  const { at, depth, spread } = plate.hooks;
  const { x0, x1, y0, y1 } = fitted.box;
  const [long, half] = [
    fitted.lengthOf(depth),
    fitted.lengthOf(spread) / 2 + fitted.lengthOf(Math.min(spread / 4, depth / 4)) + 0.6,
  ];
  const y = (y0 + y1) / 2;
  return at === "start"
    ? { x0, x1: x0 + long, y0: y - half, y1: y + half }
    : { x0: x1 - long, x1, y0: y - half, y1: y + half };
}
