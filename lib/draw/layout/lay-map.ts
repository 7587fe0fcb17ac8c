import type { LaidPlate } from "../../model/laid-plate.ts";
import { around, type Box, boxAround, cornersOf, type Spot } from "./box.ts";
import type { PlacedLabel } from "./label-candidate.ts";
import type { LaidMap } from "./laid-map.ts";
import { bendBoxes, regionWishes } from "./map-marks.ts";
import { areaOf, type MapRoom, mapRoom, mapRooms } from "./map-room.ts";
import { wishesOf } from "./map-wishes.ts";
import type { MapWords } from "./map-words.ts";
import { outlinePoints } from "./outline-points.ts";
import { outlineRails } from "./outline-rails.ts";
import { type Effort, placeLabels } from "./place-labels.ts";
import { raisedMap } from "./raised-map.ts";
import { markBox, regionMarks } from "./region-marks.ts";
import { sideBand, sideBandHeight } from "./side-band.ts";

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

const leaderBox = ({ leader }: PlacedLabel): Box[] =>
  leader ? [around(leader.map((spot) => boxAround(spot, 0, 0)))] : [];

/** A map in the middle of its area's height, with the plate's view from the side below all else where the area has room for it. */
function centred(plate: LaidPlate, { side }: MapWords, area: Box, map: LaidMap): LaidMap {
  const { scale, box } = map.fitted;
  const labels = map.labels.flatMap((label) => [label.box, ...leaderBox(label)]);
  const marks = [...map.regions.map(markBox), ...(map.hooks ? [map.hooks] : [])];
  const all = around([box, ...labels, ...marks]);
  const [above, below] = [all.y0 - area.y0, area.y1 - all.y1];
  const height = side === undefined ? 0 : sideBandHeight(plate, side, scale);
  const shown = side !== undefined && height <= above + below ? side : undefined;
  const by = (above - below + (shown ? height : 0)) / 2;
  const raised = raisedMap(map, by);
  return shown ? { ...raised, side: sideBand(plate, shown, scale, all.y1 - by) } : raised;
}

function layAt(
  plate: LaidPlate,
  area: Box,
  words: MapWords,
  marked: ReadonlySet<string>,
  { fitted, area: free }: MapRoom,
  effort: Effort,
): LaidMap {
  const { wishes, boxes, hooks } = wishesOf(plate, fitted, words, marked);
  const outline = outlinePoints(plate.outline).map((point): Spot => fitted.project(point));
  const edges = outlineRails([outline]);
  const rails = hooks ? outlineRails([outline, cornersOf(hooks)]) : edges;
  const bends = bendBoxes(plate, fitted, edges, words.side);
  const blocks = bends.map(({ box }) => box);
  const { height, crossing } = words;
  const space = { area: free, outline, rails, blocks, crossing, height };
  const { labels, lost } = placeLabels(wishes, space, effort);
  const taken = labels.flatMap((label) => [label.box, ...leaderBox(label)]);
  const regions =
    lost.length > 0
      ? []
      : regionMarks({ area, rails, boxes: taken }, regionWishes(plate, fitted, words));
  return { fitted, boxes, labels, lost, regions, bends, edges, ...(hooks && { hooks }) };
}

/** The first layout in which every label and every region has its place, or the one that lost the fewest. A plate so large that the
 * likely places leave many labels lost is not searched closely. */
function layIn(plate: LaidPlate, area: Box, words: MapWords, marked: ReadonlySet<string>): LaidMap {
  const lostAt = new Map<number, number>();
  let best: LaidMap | undefined;
  for (const { ease, few: most = Infinity, ...effort } of tries) {
    if (best !== undefined && best.lost.length > most) break;
    if ((lostAt.get(ease) ?? 0) > few) continue;
    const rooms = mapRooms(plate, area, words, ease);
    for (const room of effort.search === "likely" ? rooms : rooms.slice(-1)) {
      const laid = layAt(plate, area, words, marked, room, effort);
      if (isWhole(laid, words)) return laid;
      if (best === undefined || isBetter(laid, best)) best = laid;
      const lost = laid.lost.length === 0 ? Infinity : laid.lost.length;
      lostAt.set(ease, effort.search === "likely" ? lost : 0);
    }
  }
  if (best === undefined) throw new Error("Nothing was tried");
  return best;
}

const isBetter = (one: LaidMap, other: LaidMap): boolean =>
  one.lost.length < other.lost.length ||
  (one.lost.length === other.lost.length && one.regions.length > other.regions.length);

type Size = { readonly width: number; readonly height: number };

const isWhole = (map: LaidMap, words: MapWords): boolean =>
  map.lost.length === 0 && map.regions.length === words.regions.length;

/** A plate laid into an area; leaders cross what may be bent only where labels have no other place. */
function layWhole(
  plate: LaidPlate,
  area: Box,
  words: Omit<MapWords, "crossing">,
  marked: ReadonlySet<string>,
): LaidMap {
  const map = layIn(plate, area, { ...words, crossing: false }, marked);
  if (map.lost.length === 0 || map.bends.length === 0) return map;
  const crossed = layIn(plate, area, { ...words, crossing: true }, marked);
  return isBetter(crossed, map) ? crossed : map;
}

/** Lays a plate below a strip of words, and above one where the figure is narrow; the plate gives way a little where its labels
 * and the names of its regions need the room; its view from the side stands below where there is room left. Where they have none
 * the figure grows higher than asked, so that its sheet is seen not to fit; what has no place even there is named as lost. */
export function layMap(
  plate: LaidPlate,
  size: Size,
  words: Omit<MapWords, "crossing">,
  marked: ReadonlySet<string>,
): { map: LaidMap; size: Size } {
  const asked = { ...words, crossing: false };
  const scaleOf = (one: Size): number =>
    mapRoom(plate, areaOf(one), asked, { lanes: 2, ease: 1 }).fitted.scale;
  let map = layWhole(plate, areaOf(size), words, marked);
  let paper = size;
  for (const growth of growths) {
    if (isWhole(map, asked)) break;
    paper = { ...size, height: size.height + growth };
    if (scaleOf(paper) > scaleOf(size)) map = layWhole(plate, areaOf(paper), words, marked);
  }
  return { map: centred(plate, asked, areaOf(paper), map), size: paper };
}

/** How large a plate is drawn, in words. */
export function scaleWords(scale: number): string {
  if (scale === 1) return "true size";
  return `drawn at ${Number(scale.toFixed(2))} ${scale < 1 ? "of" : "times"} true size`;
}
