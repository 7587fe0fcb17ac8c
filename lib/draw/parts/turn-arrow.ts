import type { Pen } from "../canvas.ts";
import { arrows, edges } from "../tokens.ts";
import { arrowHead } from "./arrow.ts";
import type { Scene } from "./scene.ts";

/** An arrow that turns about the frame's axis at its right edge: a heavy bow in front of the tool with its head below. */
export function turnArrow(pen: Pen, { width, height, axis }: Scene): void {
  const half = Math.min(height * 0.34, arrows.bow, height - axis - 1.8);
  const bow = half * 0.7;
  const x = width - edges.wide - bow * 0.75;
  pen.path(
    [
      ["M", x - 0.6, axis - half],
      ["C", x + bow, axis - half, x + bow, axis + half * 0.9, x + 0.9, axis + half - 0.5],
    ],
    { stroke: "heavy" },
  );
  arrowHead(pen, [x - 1.2, axis + half + 0.2], Math.PI * 0.9);
}
