import type { LaidPlate } from "../../model/laid-plate.ts";
import { type Box, type Spot, boxAround, grown } from "./box.ts";
import { type FittedPlate, fitPlate, holeBox } from "./fit-plate.ts";
import type { LabelWish, PlacedLabel } from "./label-candidate.ts";
import { outlinePoints } from "./outline-points.ts";
import { placeLabels } from "./place-labels.ts";

/** What laying out a map needs to know of type and line: millimetres; `widths` by label. */
export type MapType = {
  readonly height: number;
  readonly line: number;
  readonly strip: number;
  readonly ring: number;
  readonly widths: ReadonlyMap<string, number>;
};

/** A plate's map as numbers: the fitted plate, each hole's box, the hooks' box and a place for every label. */
export type LaidMap = {
  readonly fitted: FittedPlate;
  readonly boxes: ReadonlyMap<string, Box>;
  readonly hooks?: Box;
  readonly labels: readonly PlacedLabel[];
};

/** Key of the hooks' word among the labels. */
export const hooksKey = "hooks";

const eases = [1, 0.94, 0.88, 0.82, 0.76, 0.7, 0.62, 0.54, 0.46];
const edge = 0.6;

function hooksBox(plate: LaidPlate, fitted: FittedPlate): Box | undefined {
  if (!plate.hooks) return undefined;
  const { at, depth, spread } = plate.hooks;
  const { x0, x1, y0, y1 } = fitted.box;
  const [long, half] = [fitted.lengthOf(depth), fitted.lengthOf(spread) / 2 + fitted.lengthOf(Math.min(spread / 4, depth / 4)) + 0.6];
  const y = (y0 + y1) / 2;
  return at === "start" ? { x0, x1: x0 + long, y0: y - half, y1: y + half } : { x0: x1 - long, x1, y0: y - half, y1: y + half };
}

function layAt(plate: LaidPlate, area: Box, type: MapType, marked: ReadonlySet<string>, ease: number): LaidMap | undefined {
  const room = { x0: area.x0 + 1, x1: area.x1 - 1, y0: area.y0 + type.height, y1: area.y1 - type.height };
  const fitted = fitPlate(plate, room, ease);
  const boxes = new Map(
    plate.holes.map((hole) => [hole.label, grown(holeBox(hole, fitted, type.line), marked.has(hole.label) ? type.ring : 0)]),
  );
  const hooks = hooksBox(plate, fitted);
  const wishes: LabelWish[] = [...boxes].map(([key, target]) => ({ key, target, width: type.widths.get(key) ?? 0 }));
  if (hooks) wishes.push({ key: hooksKey, target: hooks, width: type.widths.get(hooksKey) ?? 0 });
  const outline = outlinePoints(plate.outline).map((point): Spot => fitted.project(point));
  const labels = placeLabels(wishes, { area, outline, height: type.height });
  return labels && { fitted, boxes, hooks, labels };
}

/** Lays a plate into a figure of the given size between a strip of words above and one below; the plate gives way a little
 * where its labels need the room. Throws when even half the size leaves some label without a place. */
export function layMap(
  plate: LaidPlate,
  size: { readonly width: number; readonly height: number },
  type: MapType,
  marked: ReadonlySet<string>,
): LaidMap {
  const area = grown(boxAround([size.width / 2, size.height / 2], size.width, size.height - 2 * type.strip), -edge);
  for (const ease of eases) {
    const laid = layAt(plate, area, type, marked, ease);
    if (laid) return laid;
  }
  throw new Error(`The labels of plate "${plate.id}" have no room in ${size.width} × ${size.height} mm`);
}

/** How large a plate is drawn, in words. */
export function scaleWords(scale: number): string {
  if (scale === 1) return "true size";
  return `drawn at ${Number(scale.toFixed(2))} ${scale < 1 ? "of" : "times"} true size`;
}
