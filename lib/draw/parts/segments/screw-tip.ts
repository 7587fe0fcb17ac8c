import type { Segment } from "../shape.ts";
import { thread } from "./thread.ts";
import type { ThreadSizes } from "./thread-edge.ts";

/** The tip of a screw, mm: its thread growing from a point with a cutting flute, or from a rounded end. */
export function screwTip(length: number, sizes: ThreadSizes, form: "cutting" | "rounded"): Segment {
  const { core } = sizes;
  const tip = form === "cutting" ? core * 0.35 : core * 0.6;
  const nose = form === "cutting" ? 0 : tip / 2;
  const growing = thread(length - nose, {
    ...sizes,
    lead: length - nose,
    tip,
    ends: form === "cutting" ? "left" : "none",
  });
  return {
    length,
    half: growing.half,
    draw(pen) {
      const all = { from: 0, to: growing.length, cutLeft: false, cutRight: false };
      pen.group("thread", { at: [nose, 0] }, (inner) => growing.draw(inner, all));
      if (form === "rounded") {
        pen.path(
          [
            ["M", nose, -nose],
            ["A", nose, 0, 0, nose, nose],
          ],
          { fill: "metal", data: { edge: "rounded-tip" } },
        );
        return;
      }
      const half = core * 0.09;
      pen.polygon(
        [
          [0.15, -half * 0.4],
          [length, -half],
          [length * 1.1, half * 0.6],
          [0.15, half],
        ],
        { fill: "ink", stroke: "none", data: { edge: "cutting-flute" } },
      );
    },
  };
}
