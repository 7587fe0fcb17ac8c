import type { Pen, Spot } from "../canvas.ts";
import { arrows } from "../tokens.ts";

const { head, half } = arrows;

/** The one arrow of all figures: a heavy shaft and a filled head that ends at `to`; millimetres. */
export function arrow(pen: Pen, from: Spot, to: Spot): void {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [ux, uy] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  const neck: Spot = [to[0] - ux * head, to[1] - uy * head];
  pen.line(from, neck, { stroke: "heavy" });
  arrowHead(pen, to, Math.atan2(uy, ux));
}

/** The filled head of an arrow whose tip is `to`, pointing along `angle` (radians, clockwise from the right). */
export function arrowHead(pen: Pen, to: Spot, angle: number): void {
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  const neck: Spot = [to[0] - ux * head, to[1] - uy * head];
  pen.polygon(
    [to, [neck[0] - uy * half, neck[1] + ux * half], [neck[0] + uy * half, neck[1] - ux * half]],
    {
      fill: "ink",
      stroke: "none",
    },
  );
}
