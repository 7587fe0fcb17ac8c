import type { Segment } from "../shape.ts";
import { rod } from "./rod.ts";

/** The prismatic tip of a driver, mm: its lobes as lines along the axis. */
export function driveTip(length: number, across: number): Segment {
  const plain = rod(length, across, { chamfer: Math.min(0.35, across * 0.12) });
  return {
    ...plain,
    draw(pen, shown) {
      plain.draw(pen, shown);
      for (const part of [-0.22, 0.22]) {
        pen.line([Math.max(shown.from, 0.4), part * across], [shown.to, part * across], {
          stroke: "hair",
        });
      }
    },
  };
}
