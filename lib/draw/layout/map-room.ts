import type { LaidPlate } from "../../model/laid-plate.ts";
import { edges, gaps } from "../tokens.ts";
import type { Box } from "./box.ts";
import { type FittedPlate, fitPlate, plateExtent, scaleIn } from "./fit-plate.ts";
import { mapStrips } from "./map-strips.ts";
import type { MapWords } from "./map-words.ts";
import { plateNeck } from "./plate-neck.ts";
import { regionRow, uprightRoom } from "./region-marks.ts";
import { sideBandHeight } from "./side-band.ts";

/** A plate in its figure, the part of the figure that its labels may use, and how much of its height is kept below them. */
export type MapRoom = { readonly fitted: FittedPlate; readonly area: Box; readonly below: number };

const edge = edges.close;

/** What is between a figure's strips of words. */
export function areaOf(size: { readonly width: number; readonly height: number }): Box {
  const { above, below } = mapStrips(size.width);
  return {
    x0: edge,
    x1: size.width - edge,
    y0: above + edge,
    y1: size.height - below - edge,
  };
}

/** Where the plate may lie: labels need a line of text below it, and above it too where there are two lanes. */
function roomIn(area: Box, words: MapWords, lanes: 1 | 2): Box {
  const lane = words.height + gaps.shortened;
  return {
    x0: area.x0 + 1,
    x1: area.x1 - 1,
    y0: area.y0 + (lanes === 2 ? lane : 0.6),
    y1: area.y1 - lane,
  };
}

/** How much smaller a plate is drawn at most, so that its regions and its view from the side have room below it. */
const leastPart = 0.85;

/** What stands below a plate and its labels, mm of height at a scale: as much for each unit of scale, and as much besides. */
type Below = { readonly each: number; readonly besides: number };

const rowHeight = regionRow.height + regionRow.clear + 0.2;

/** What would stand below a plate, the most first: the names of its regions with its view from the side, the names alone, nothing. */
function belows(plate: LaidPlate, { regions, side }: MapWords): readonly Below[] {
  const row = regions.length > 0 ? rowHeight : 0;
  const names = { each: 0, besides: row };
  const none = { each: 0, besides: 0 };
  if (side === undefined) return [names, none];
  const besides = sideBandHeight(plate, side, 0);
  const each = sideBandHeight(plate, side, 1) - besides;
  return [{ each, besides: besides + row }, names, none];
}

/** Sets a plate into an area as large as it goes, or a little smaller where that makes room below for the names of its regions and
 * its view from the side; else keeps room for its head's name beyond its end where there is some. Millimetres. */
export function mapRoom(
  plate: LaidPlate,
  area: Box,
  words: MapWords,
  { lanes, ease }: { readonly lanes: 1 | 2; readonly ease: number },
): MapRoom {
  const room = roomIn(area, words, lanes);
  const largest = Math.min(words.most, scaleIn(plate, room, ease));
  const { x0, x1, y0, y1 } = plateExtent(plate);
  const least = Math.max(largest * leastPart, Math.min(largest, 1));
  for (const { each, besides } of belows(plate, words)) {
    const most = (room.y1 - room.y0 - besides) / ((y1 - y0) / 1000 + each);
    const scale = Math.min(largest, Math.floor(most * 100) / 100);
    if (scale < least) continue;
    const below = besides + each * scale;
    const named = besides >= rowHeight || words.regions.length === 0;
    const beside = named ? 0 : besideRoom(words, room.x1 - room.x0 - ((x1 - x0) * scale) / 1000);
    const atStart = plateNeck(plate)?.head === "start";
    const free = {
      x0: area.x0 + (atStart ? beside : 0),
      x1: area.x1 - (atStart ? 0 : beside),
      y0: area.y0,
      y1: area.y1 - below,
    };
    return { fitted: fitPlate(plate, roomIn(free, words, lanes), scale), area: free, below };
  }
  throw new Error("A plate fits at its largest");
}

/** The room that the head's shortest name takes beyond its end, 0 where there is less than it and a label need. */
function besideRoom({ regions }: MapWords, spare: number): number {
  const head = regions.find(({ region }) => region === "head");
  const least = Math.min(...(head?.words.map(({ width }) => width) ?? [0])) + uprightRoom;
  return least + 2 <= spare ? least : 0;
}

/** The rooms to try in turn: first those with the plate's view from the side where the plate is to be large; with one lane of labels
 * only where that shows the plate clearly larger or more below it. */
export function mapRooms(
  plate: LaidPlate,
  area: Box,
  words: MapWords,
  ease: number,
): readonly MapRoom[] {
  const { side: _, ...plain } = words;
  const asked = ease === 1 && words.side ? [words, plain] : [plain];
  const rooms = asked.flatMap((one) => roomsFor(plate, area, one, ease));
  return rooms.filter((room, at) => rooms.findIndex((other) => isSame(room, other)) === at);
}

function roomsFor(plate: LaidPlate, area: Box, words: MapWords, ease: number): readonly MapRoom[] {
  const two = mapRoom(plate, area, words, { lanes: 2, ease });
  const one = mapRoom(plate, area, words, { lanes: 1, ease });
  const gains = one.fitted.scale > two.fitted.scale * 1.06 || one.below > two.below + 1;
  return gains ? [one, two] : [two];
}

const isSame = (one: MapRoom, other: MapRoom): boolean =>
  one.fitted.scale === other.fitted.scale &&
  one.fitted.box.y0 === other.fitted.box.y0 &&
  one.below === other.below;
