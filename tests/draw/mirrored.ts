import type { LaidPlate, Point } from "../../lib/model/laid-plate.ts";

/** The same plate for the other side: y reversed, nothing else. */
export function mirrored(plate: LaidPlate): LaidPlate {
  const sum = plate.bounds.min[1] + plate.bounds.max[1];
  const flip = ([x, y]: Point): Point => [x, sum - y];
  const side = plate.side === "left" ? "right" : plate.side === "right" ? "left" : "none";
  return {
    ...plate,
    side,
    outline: {
      start: flip(plate.outline.start),
      segments: plate.outline.segments.map((piece) =>
        "line" in piece
          ? { line: flip(piece.line) }
          : { curve: [flip(piece.curve[0]), flip(piece.curve[1]), flip(piece.curve[2])] },
      ),
    },
    holes: plate.holes.map((hole) => ({
      ...hole,
      at: flip(hole.at),
      zones: hole.zones.map((zone) => ({ ...zone, at: flip(zone.at) })),
    })),
  };
}
