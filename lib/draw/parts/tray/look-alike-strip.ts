import type { Pen } from "../../canvas.ts";
import { marks } from "../../tokens.ts";

/** Width of the strip, mm. */
export const stripWidth = marks.strip;

/** A chequered strip down the left edge of a slot whose neighbour looks alike, mm; words say so beside it. */
export function drawLookAlikeStrip(pen: Pen, height: number): void {
  const tile = stripWidth / 2;
  const rows = Math.floor(height / tile);
  pen.group("look-alike", { data: { flag: "look-alike" } }, (inner) => {
    for (let row = 0; row < rows; row += 1) {
      inner.box([row % 2 === 0 ? 0 : tile, row * tile], tile, tile, {
        fill: "ink",
        stroke: "none",
      });
    }
    inner.line([stripWidth, 0], [stripWidth, height], { stroke: "hair" });
  });
}
