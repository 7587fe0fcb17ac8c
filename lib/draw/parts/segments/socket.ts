import type { Segment } from "../shape.ts";
import { rod } from "./rod.ts";

/** The open end that takes a coupling, mm: a collar with the hollow dashed. */
export function socket(length: number, across: number): Segment {
  const collar = rod(length, across * 1.5, { chamfer: 0.5 });
  const deep = length * 0.75;
  return {
    ...collar,
    draw(pen, shown) {
      collar.draw(pen, shown);
      const right = Math.min(shown.to, deep);
      for (const sign of [-1, 1]) {
        const y = (sign * across) / 2;
        pen.line([shown.from, y], [right, y], {
          stroke: "hair",
          dash: "hidden",
          data: { edge: "socket" },
        });
      }
      if (deep <= shown.to)
        pen.line([deep, -across / 2], [deep, across / 2], { stroke: "hair", dash: "hidden" });
      const groove = length * 0.88;
      if (groove < shown.to)
        pen.line([groove, -across * 0.75], [groove, across * 0.75], { stroke: "hair" });
    },
  };
}
