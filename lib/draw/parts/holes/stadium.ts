import type { Look, PathPiece, Pen } from "../../canvas.ts";

/** A stadium along x about the origin, mm: `long` overall, `high` across. */
export function drawStadium(pen: Pen, long: number, high: number, look: Look): void {
  const radius = high / 2;
  const reach = Math.max(0, long / 2 - radius);
  const pieces: readonly PathPiece[] = [
    ["M", -reach, -radius],
    ["L", reach, -radius],
    ["A", radius, 0, 1, reach, radius],
    ["L", -reach, radius],
    ["A", radius, 0, 1, -reach, -radius],
    ["Z"],
  ];
  pen.path(pieces, look);
}
