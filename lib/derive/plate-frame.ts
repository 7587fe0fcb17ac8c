import type { Point } from "../model/laid-plate.ts";
import type { Um } from "../model/measure.ts";
import type { DrawnPlate } from "../model/plate.ts";

/** Turns a point written from a plate's start or far end into plate coordinates, micrometres. */
export type PlateFrame = (from: "start" | "end", point: Point) => Point;

/** The frame of one length variant: its far end lies the tail beyond the last hole of the row. A mirrored plate has every y reversed. */
export function plateFrame(
  { row, tail }: DrawnPlate,
  holes: number,
  isMirrored: boolean,
): PlateFrame {
  const end: Um = row.first[0] + row.pitch * (holes - 1) + tail;
  return (from, [x, y]) => [from === "end" ? end + x : x, isMirrored ? 0 - y : y];
}
