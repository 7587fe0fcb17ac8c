import type { Pen } from "../canvas.ts";
import { marks } from "../tokens.ts";
import type { Scene } from "./scene.ts";

const side = marks.square;

/** The mark of a right angle between the plate's face and the tool's axis. */
export function squareMark(
  pen: Pen,
  { plate, axis, height }: Pick<Scene, "plate" | "axis" | "height">,
): void {
  const y = Math.min(axis + 5.4, height - 3.4);
  pen.polyline(
    [
      [plate.to, y],
      [plate.to + side, y],
      [plate.to + side, y + side],
    ],
    { stroke: "bold" },
  );
  pen.circle([plate.to + side / 2, y + side / 2 + 0.1], 0.35, { fill: "ink", stroke: "none" });
}
