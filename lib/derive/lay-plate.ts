import type { Catalogue } from "../model/catalogue.ts";
import type { Defined } from "../model/definition.ts";
import type { LaidPlate } from "../model/laid-plate.ts";
import type { Plate } from "../model/plate.ts";
import { drawnPlate } from "./drawn-plate.ts";
import { layHoles } from "./lay-holes.ts";
import { layOutline } from "./lay-outline.ts";
import { outlineBounds } from "./outline-bounds.ts";
import { plateFrame } from "./plate-frame.ts";

/** A plate in its length variant of so many holes in true geometry, micrometres; a mirrored one has every y reversed and the same labels. */
export function layPlate(plate: Defined<Plate>, holes: number, catalogue: Catalogue): LaidPlate {
  const drawn = drawnPlate(catalogue, plate);
  const variant = drawn.variants.find((one) => one.holes === holes);
  if (variant === undefined) throw new Error(`${plate.id} has no variant of ${holes} holes`);
  const frame = plateFrame(drawn, holes, "mirror_of" in plate);
  const outline = layOutline(drawn, frame);
  const bounds = outlineBounds(outline);
  const { hooks, proximal } = drawn;
  return {
    id: `${plate.id}-${holes}`,
    plate: plate.id,
    system: plate.system,
    name: plate.name,
    side: plate.side,
    holesInRow: holes,
    length: bounds.max[0] - bounds.min[0],
    statedLength: variant.length,
    proximal,
    outline,
    bounds,
    holes: layHoles(catalogue, drawn, holes, frame),
    ...(hooks
      ? { hooks: { count: hooks.count, depth: hooks.depth, spread: hooks.spread, at: hooks.at } }
      : {}),
  };
}
