import type { Um } from "./measure.ts";
import { rackLengths } from "./rack-lengths.ts";
import type { Screw } from "./screw.ts";
import type { Slot } from "./tray.ts";

export type Rack = Extract<Slot, { holds: "rack" }>;
type Lengths = Pick<Screw, "lengths">;

/** Every length of a rack in order, micrometres, with its pieces as the tray's list states them. */
export function rackPieces(
  screw: Lengths,
  rack: Rack,
): readonly { readonly length: Um; readonly pieces: number }[] {
  return rackLengths(screw).map((length) => ({
    length,
    pieces: rack.except.find((one) => one.length === length)?.quantity ?? rack.quantity,
  }));
}

/** Pieces of a rack in lengths that lie in one of the ranges (micrometres, both ends with them), lengths seen empty left out; without a range, of the whole rack. */
export function piecesWithin(
  screw: Lengths,
  rack: Rack,
  ranges: readonly (readonly [Um, Um])[],
  empty: readonly Um[],
): number {
  const asked = (length: Um): boolean =>
    ranges.length === 0 || ranges.some(([from, to]) => length >= from && length <= to);
  return rackPieces(screw, rack)
    .filter(({ length }) => asked(length) && !empty.includes(length))
    .reduce((sum, { pieces }) => sum + pieces, 0);
}
