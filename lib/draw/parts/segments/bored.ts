import type { Segment } from "../shape.ts";

/** A segment with a bore through it, mm: two dashed lines along the axis. */
export function bored(segment: Segment, bore: number): Segment {
  return {
    ...segment,
    draw(pen, shown) {
      segment.draw(pen, shown);
      for (const y of [-bore / 2, bore / 2]) {
        pen.line([shown.from, y], [shown.to, y], {
          stroke: "hair",
          dash: "hidden",
          data: { edge: "bore" },
        });
      }
    },
  };
}
