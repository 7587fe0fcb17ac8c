import type { Segment } from "../shape.ts";
import { drawProfile, type Ends } from "./profile.ts";

/** A cone from one diameter to another, left to right, mm. */
export function cone(length: number, left: number, right: number, ends: Ends = "both"): Segment {
  const half = (x: number): number => (left + ((right - left) * x) / length) / 2;
  return {
    length,
    half: Math.max(left, right) / 2,
    halfAt: half,
    draw(pen, shown) {
      const { from, to } = shown;
      drawProfile(
        pen,
        [
          [from, -half(from)],
          [to, -half(to)],
        ],
        [
          [from, half(from)],
          [to, half(to)],
        ],
        shown,
        ends,
      );
    },
  };
}
