import type { SheetKind } from "../model/sheet.ts";

/** Height of a capital or figure as a part of the font size, read from the typeface's own tables. */
export const capHeight = 0.668;

/** How far from the eye each kind of sheet is read, millimetres. */
export const readingDistance: Readonly<Record<SheetKind, number>> = {
  pairing: 800,
  steps: 800,
  tray: 800,
  case: 800,
  "plate-map": 500,
  lengths: 400,
};

/** Notes and identity are read in the hand, millimetres. */
const handDistance = 350;

/** The smallest font size, millimetres, whose capitals span `arc` minutes at `distance` millimetres. */
export function floorSize(arc: number, distance: number): number {
  const half = ((arc / 2 / 60) * Math.PI) / 180;
  return (2 * distance * Math.tan(half)) / capHeight;
}

/** The floors of the three roles of type on one kind of sheet, millimetres of font size: called-out words 20′, body 16′, notes 16′ in the hand. */
export function typeFloors(kind: SheetKind): {
  readonly called: number;
  readonly body: number;
  readonly note: number;
} {
  const distance = readingDistance[kind];
  return {
    called: floorSize(20, distance),
    body: floorSize(16, distance),
    note: floorSize(16, handDistance),
  };
}
