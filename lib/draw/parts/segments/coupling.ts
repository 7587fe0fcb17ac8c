import type { Segment } from "../shape.ts";
import { rod } from "./rod.ts";

/** A coupling's shank end, mm: a plain length, a groove and a flat that keep it from turning and from sliding out. */
export function coupling(length: number, across: number): readonly Segment[] {
  const neck = 1;
  const end = Math.min(length * 0.45, across * 1.1);
  return [
    rod(Math.max(0.5, length - neck - end), across, { data: { edge: "coupling" } }),
    rod(neck, across * 0.72),
    flatted(end, across),
  ];
}

function flatted(length: number, across: number): Segment {
  const plain = rod(length, across);
  return {
    ...plain,
    draw(pen, shown) {
      plain.draw(pen, shown);
      const right = Math.min(shown.to, length);
      const left = Math.max(shown.from, length * 0.3);
      if (right > left)
        pen.polyline(
          [
            [left, -across * 0.5],
            [left, -across * 0.14],
            [right, -across * 0.14],
          ],
          { stroke: "hair" },
        );
    },
  };
}
