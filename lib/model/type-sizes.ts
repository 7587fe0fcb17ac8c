import type { Format } from "./format.ts";
import type { SheetKind } from "./sheet.ts";

/** Heights as parts of the font size, read from the typeface's own tables: a capital or figure, and a small letter. */
export const capHeight = 0.668;
export const xHeight = 0.496;

/** How far from the eye each kind of sheet is read, millimetres, unless its format says otherwise. */
const kindDistance: Readonly<Record<SheetKind, number>> = {
  pairing: 800,
  steps: 800,
  tray: 800,
  case: 800,
  "plate-map": 500,
  lengths: 400,
  mishaps: 800,
  poster: 2000,
  pocket: 350,
  labels: 500,
};

/** Notes and identity are read in the hand, millimetres. */
const handDistance = 350;
/** A small letter may span this part of the arc a capital must span; common practice. */
const smallLetter = 0.7;

/** How far from the eye a sheet of a kind is read in a format, millimetres. */
export function readingDistance(kind: SheetKind, { distance }: Pick<Format, "distance">): number {
  return distance ?? kindDistance[kind];
}

/** The smallest font size, millimetres, whose capitals span `arc` minutes at `distance` millimetres and whose small letters seven tenths of it. */
export function floorSize(
  arc: number,
  distance: number,
  { cap, x }: { readonly cap: number; readonly x: number } = { cap: capHeight, x: xHeight },
): number {
  const height = (minutes: number): number =>
    2 * distance * Math.tan(((minutes / 2 / 60) * Math.PI) / 180);
  return Math.max(height(arc) / cap, height(arc * smallLetter) / x);
}

/** Font sizes of the roles of type, millimetres. */
export type TypeSizes = {
  readonly called: number;
  readonly body: number;
  readonly note: number;
};

/** The floors of the three roles of type of a kind of sheet in a format: called-out words 20′ and body 16′ at its distance, notes 16′ in the hand. */
export function typeFloors(kind: SheetKind, format: Pick<Format, "distance">): TypeSizes {
  const distance = readingDistance(kind, format);
  return {
    called: floorSize(20, distance),
    body: floorSize(16, distance),
    note: floorSize(16, handDistance),
  };
}

const wholeTenth = (size: number): number => Math.ceil(size * 10 - 1e-6) / 10;

/** How much larger a sheet is set in a format than at its kind's own distance: 1 where the format says no distance. */
export const enlargement = (kind: SheetKind, { distance }: Pick<Format, "distance">): number =>
  (distance ?? kindDistance[kind]) / kindDistance[kind];

/** The sizes a sheet is set in, millimetres: its floors, rounded up to a tenth, and a title above them. */
export function typeSizes(
  kind: SheetKind,
  format: Pick<Format, "distance">,
): TypeSizes & { readonly title: number } {
  const floors = typeFloors(kind, format);
  const called = wholeTenth(floors.called);
  const distance = readingDistance(kind, format);
  return {
    called,
    body: wholeTenth(floors.body),
    note: distance >= 800 ? 2.7 : wholeTenth(floors.note),
    title: wholeTenth(Math.max(called * 1.15, distance <= handDistance ? 4 : 6.5)),
  };
}
