import type { Pen, Spot } from "../canvas.ts";

/** The one signal of a limiter: rays from a dot. */
export function signalMark(pen: Pen, [x, y]: Spot): void {
  pen.circle([x, y], 0.9, { fill: "ink", stroke: "none" });
  for (let ray = 0; ray < 8; ray++) {
    const angle = (Math.PI * ray) / 4;
    pen.line(
      [x + 1.7 * Math.cos(angle), y + 1.7 * Math.sin(angle)],
      [x + 3 * Math.cos(angle), y + 3 * Math.sin(angle)],
      { stroke: "bold" },
    );
  }
}
