import type { LaidPlate } from "../../model/laid-plate.ts";
import { type Box, boxAround, gapBetween, grown, middle, type Spot } from "./box.ts";
import { type FittedPlate, fitPlate, holeBox } from "./fit-plate.ts";
import type { LabelWish, PlacedLabel } from "./label-candidate.ts";
import { mapStrips } from "./map-strips.ts";
import { outlinePoints } from "./outline-points.ts";
import { type Effort, placeLabels } from "./place-labels.ts";

/** What laying out a map needs to know of type and line: millimetres; `widths` by label. */
export type MapType = {
  readonly height: number;
  readonly line: number;
  readonly ring: number;
  readonly widths: ReadonlyMap<string, number>;
};

/** A plate's map as numbers: the fitted plate, each hole's box, the hooks' box, a place for every label that has one. */
export type LaidMap = {
  readonly fitted: FittedPlate;
  readonly boxes: ReadonlyMap<string, Box>;
  readonly hooks?: Box;
  readonly labels: readonly PlacedLabel[];
  /** Keys of labels that have no place. */
  readonly lost: readonly string[];
};

/** Key of the hooks' word among the labels. */
export const hooksKey = "hooks";

/** What is tried in turn: how large the plate is against the room, and how hard its labels are placed; the last only where the
 * best before lost few. */
const tries: readonly (Effort & { readonly ease: number; readonly few?: number })[] = [
  { ease: 1, search: "likely", moves: 60 },
  { ease: 0.93, search: "likely", moves: 60 },
  { ease: 1, search: "all", moves: 150 },
  { ease: 0.86, search: "all", moves: 200 },
  { ease: 0.78, search: "all", moves: 400 },
  { ease: 0.7, search: "all", moves: 400 },
  { ease: 0.6, search: "all", moves: 400 },
  { ease: 0.5, search: "all", moves: 400 },
  { ease: 0.78, search: "all", moves: 6000, few: 2 },
  { ease: 0.74, search: "all", moves: 6000, few: 2 },
];
const few = 1;
const growths = [8, 20];
const [leastRing, ringGap] = [0.55, 0.15];
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

/** Lanes of labels to try: one only where that makes the plate clearly larger. */
function lanesToTry(plate: LaidPlate, area: Box, type: MapType): readonly (1 | 2)[] {
  const scaleOf = (lanes: 1 | 2): number => fitPlate(plate, roomIn(area, type, lanes)).scale;
  return scaleOf(1) > scaleOf(2) * 1.06 ? [1, 2] : [2];
}

/** How far a ring stands off its hole: `most`, or half the way to the nearest other hole, so that two rings never meet. */
function ringMargin(hole: Box, others: readonly Box[], most: number): number {
  const gap = Math.min(...others.map((other) => gapBetween(hole, other)));
  return Math.max(leastRing, Math.min(most, gap / 2 - ringGap));
}

function layAt(
  plate: LaidPlate,
  area: Box,
  type: MapType,
  marked: ReadonlySet<string>,
  fitted: FittedPlate,
  effort: Effort,
): LaidMap {
  const bare = plate.holes.map((hole) => holeBox(hole, fitted, type.line));
  const boxes = new Map(
    plate.holes.map(({ label }, index) => {
      const own = bare[index] ?? fitted.box;
      if (!marked.has(label)) return [label, own];
      const others = bare.filter((_, other) => other !== index);
      return [label, grown(own, ringMargin(own, others, type.ring))];
    }),
  );
  const hooks = hooksBox(plate, fitted);
  const wishes = plate.holes.map(({ label, at }): LabelWish => {
    const spot = fitted.project(at);
    return {
      key: label,
      at: spot,
      target: boxes.get(label) ?? boxAround(spot, 0, 0),
      width: type.widths.get(label) ?? 0,
      isHole: true,
      row: label.replace(/[0-9]+$/, ""),
    };
  });
  if (hooks)
    wishes.push({
      key: hooksKey,
      at: middle(hooks),
      target: hooks,
      width: type.widths.get(hooksKey) ?? 0,
      isHole: false,
    });
  const outline = outlinePoints(plate.outline).map((point): Spot => fitted.project(point));
  const placed = placeLabels(wishes, { area, outline, height: type.height }, effort);
  return { fitted, boxes, hooks, ...placed };
}

type Size = { readonly width: number; readonly height: number };

function areaOf(size: Size): Box {
  const { above, below } = mapStrips(size);
  return {
    x0: edge,
    x1: size.width - edge,
    y0: above + edge,
    y1: size.height - below - edge,
  };
}

/** The first layout in which every label has its place, or the one that lost the fewest. A plate so large that the likely
 * places leave many labels lost is not searched closely. */
function layIn(plate: LaidPlate, area: Box, type: MapType, marked: ReadonlySet<string>): LaidMap {
  const lanes = lanesToTry(plate, area, type);
  const lostAt = new Map<number, number>();
  let best: LaidMap | undefined;
  for (const { ease, few: most = Infinity, ...effort } of tries) {
    if (best !== undefined && best.lost.length > most) break;
    if ((lostAt.get(ease) ?? 0) > few) continue;
    for (const count of effort.search === "likely" ? lanes : lanes.slice(-1)) {
      const fitted = fitPlate(plate, roomIn(area, type, count), ease);
      const laid = layAt(plate, area, type, marked, fitted, effort);
      if (laid.lost.length === 0) return laid;
      if (best === undefined || laid.lost.length < best.lost.length) best = laid;
      lostAt.set(ease, effort.search === "likely" ? laid.lost.length : 0);
    }
  }
  if (best === undefined) throw new Error("Nothing was tried");
  return best;
}

/** Lays a plate below a strip of words, and above one where there is height; the plate gives way a little where its labels need
 * the room. Where they have none the figure grows higher than asked, so that its sheet is seen not to fit; what has no place
 * even there is named as lost. */
export function layMap(
  plate: LaidPlate,
  size: Size,
  type: MapType,
  marked: ReadonlySet<string>,
): { map: LaidMap; size: Size } {
  const scaleIn = (one: Size): number => fitPlate(plate, roomIn(areaOf(one), type, 2)).scale;
  let map = layIn(plate, areaOf(size), type, marked);
  let paper = size;
  for (const growth of growths) {
    if (map.lost.length === 0) break;
    paper = { ...size, height: size.height + growth };
    if (scaleIn(paper) > scaleIn(size)) map = layIn(plate, areaOf(paper), type, marked);
  }
  return { map, size: paper };
}

/** How large a plate is drawn, in words. */
export function scaleWords(scale: number): string {
  if (scale === 1) return "true size";
  return `drawn at ${Number(scale.toFixed(2))} ${scale < 1 ? "of" : "times"} true size`;
}
