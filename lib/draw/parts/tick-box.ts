import type { Pen, Spot } from "../canvas.ts";

/** A box of the given side (mm), ticked or to be ticked. */
export function tickBox(pen: Pen, [x, y]: Spot, side: number, ticked: boolean): void {
  pen.box([x, y], side, side, { fill: "metal", stroke: "bold" });
  if (!ticked) return;
  pen.polyline(
    [
      [x + side * 0.2, y + side * 0.52],
      [x + side * 0.43, y + side * 0.78],
      [x + side * 0.95, y - side * 0.12],
    ],
    { stroke: "heavy" },
  );
}
