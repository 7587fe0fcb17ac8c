import type { Screw } from "../../../model/screw.ts";
import type { Spot } from "../../canvas.ts";
import { inMm } from "../instrument-part.ts";
import type { Segment } from "../shape.ts";
import { headBowl, headThread } from "./head-profile.ts";
import { drawProfile } from "./profile.ts";
import { thread } from "./thread.ts";

/** A screw's head, under side to the left, mm: a spherical bowl, a plain cone, or a threaded cone by its own pitch; the recess dashed. */
export function screwHead(
  head: Screw["head"],
  pitch: number,
  neck: number,
  across: number,
): Segment {
  const wide = inMm(head.diameter);
  const height = inMm(head.height);
  const body =
    head.form === "threaded"
      ? thread(height, { ...headThread(head, pitch), ends: "both" })
      : plainHead(head, neck);
  return {
    ...body,
    draw(pen, shown) {
      pen.group("head", { data: { head: head.form, diameter: wide, height } }, (inner) =>
        body.draw(inner, shown),
      );
      const deep = height * 0.55;
      const half = Math.min(across, wide * 0.8) / 2;
      const hidden = { stroke: "hair", dash: "hidden" } as const;
      pen.polyline(
        [
          [height, -half],
          [height - deep, -half],
          [height - deep, half],
          [height, half],
        ],
        { ...hidden, data: { edge: "recess" } },
      );
    },
  };
}

function plainHead(head: Screw["head"], neck: number): Segment {
  const wide = inMm(head.diameter);
  const height = inMm(head.height);
  const bowl = headBowl(head, neck);
  const edge = (sign: number): Spot[] => [
    ...Array.from({ length: 13 }, (_, index): Spot => {
      const x = (bowl.height * index) / 12;
      return [x, sign * bowl.half(x)];
    }),
    [height - 0.25, (sign * wide) / 2],
    [height, sign * (wide / 2 - 0.3)],
  ];
  return {
    length: height,
    half: wide / 2,
    draw: (pen, shown) => drawProfile(pen, edge(-1), edge(1), shown),
  };
}
