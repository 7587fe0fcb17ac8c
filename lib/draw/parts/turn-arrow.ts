import type { Pen, Spot } from "../canvas.ts";
import { arrowHead } from "./arrow.ts";

/** An arrow that turns about the frame's axis: a heavy bow in front of the tool with its head below; mm. */
export function turnArrow(pen: Pen, [x, y]: Spot, half: number): void {
  const bow = half * 0.75;
  pen.path(
    [["M", x - 0.6, y - half], ["C", x + bow, y - half, x + bow, y + half * 0.9, x + 0.9, y + half - 0.5]],
    { stroke: "heavy" },
  );
  arrowHead(pen, [x - 1.2, y + half + 0.2], Math.PI * 0.9);
}
