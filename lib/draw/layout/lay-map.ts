import type { LaidPlate } from "../../model/laid-plate.ts";
import { type Box, grown, type Spot } from "./box.ts";
import { type FittedPlate, fitPlate, holeBox } from "./fit-plate.ts";
import type { LabelWish, PlacedLabel } from "./label-candidate.ts";
import { mapStrips } from "./map-strips.ts";
import { outlinePoints } from "./outline-points.ts";
import { type LabelOrder, placeLabels } from "./place-labels.ts";

/** What laying out a map needs to know of type and line: millimetres; `widths` by label. */
export type MapType = {
  readonly height: number;
  readonly line: number;
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

const eases = [1, 0.93, 0.86, 0.78, 0.7, 0.6, 0.5];
const growth = [0, 2, 4, 8, 14, 20, 40];
const edge = 0.6;

function hooksBox(plate: LaidPlate, fitted: FittedPlate): Box | undefined {
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

type Room = { readonly ease: number; readonly lanes: 1 | 2 };

/** Where the plate may lie: labels need a line of text below it, and above it too where there are two lanes. */
function roomIn(area: Box, type: MapType, lanes: 1 | 2): Box {
  const lane = type.height + 0.9;
  return {
    x0: area.x0 + 1,
    x1: area.x1 - 1,
    y0: area.y0 + (lanes === 2 ? lane : 0.6),
    y1: area.y1 - lane,
  };
}

/** Rooms to try, the largest plate first: one lane of labels only where that makes the plate clearly larger. */
function roomsToTry(plate: LaidPlate, area: Box, type: MapType): Room[] {
  const scaleOf = (lanes: 1 | 2): number => fitPlate(plate, roomIn(area, type, lanes)).scale;
  const lanes: (1 | 2)[] = scaleOf(1) > scaleOf(2) * 1.06 ? [1, 2] : [2];
  return eases.flatMap((ease) => lanes.map((count) => ({ ease, lanes: count })));
}

function layAt(
  plate: LaidPlate,
  area: Box,
  type: MapType,
  marked: ReadonlySet<string>,
  { ease, lanes }: Room,
  order: LabelOrder,
): LaidMap | undefined {
  const fitted = fitPlate(plate, roomIn(area, type, lanes), ease);
  const boxes = new Map(
    plate.holes.map((hole) => [
      hole.label,
      grown(holeBox(hole, fitted, type.line), marked.has(hole.label) ? type.ring : 0),
    ]),
  );
  const hooks = hooksBox(plate, fitted);
  const wishes: LabelWish[] = [...boxes].map(([key, target]) => ({
    key,
    target,
    width: type.widths.get(key) ?? 0,
    mayLieInside: true,
  }));
  if (hooks)
    wishes.push({
      key: hooksKey,
      target: hooks,
      width: type.widths.get(hooksKey) ?? 0,
      mayLieInside: false,
    });
  const outline = outlinePoints(plate.outline).map((point): Spot => fitted.project(point));
  const labels = placeLabels(wishes, { area, outline, height: type.height }, order);
  return labels && { fitted, boxes, hooks, labels };
}

type Size = { readonly width: number; readonly height: number };

function layIn(
  plate: LaidPlate,
  size: Size,
  type: MapType,
  marked: ReadonlySet<string>,
): LaidMap | undefined {
  const { above, below } = mapStrips(size);
  const area = {
    x0: edge,
    x1: size.width - edge,
    y0: above + edge,
    y1: size.height - below - edge,
  };
  const rooms = roomsToTry(plate, area, type);
  for (const order of ["along", "scarce"] as const) {
    for (const room of rooms) {
      const laid = layAt(plate, area, type, marked, room, order);
      if (laid) return laid;
    }
  }
  return undefined;
}

/** Lays a plate below a strip of words, and above one where there is height; the plate gives way a little where its labels need
 * the room. When even half the size leaves some label without a place, the figure grows higher than asked, so that its sheet
 * is seen not to fit; throws when that does not help either. */
export function layMap(
  plate: LaidPlate,
  size: Size,
  type: MapType,
  marked: ReadonlySet<string>,
): { map: LaidMap; size: Size } {
  for (const more of growth) {
    const tall = { ...size, height: size.height + more };
    const map = layIn(plate, tall, type, marked);
    if (map) return { map, size: tall };
  }
  throw new Error(
    `The labels of plate "${plate.id}" have no room in ${size.width} × ${size.height} mm`,
  );
}

/** How large a plate is drawn, in words. */
export function scaleWords(scale: number): string {
  if (scale === 1) return "true size";
  return `drawn at ${Number(scale.toFixed(2))} ${scale < 1 ? "of" : "times"} true size`;
}
