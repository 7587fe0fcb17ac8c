import type { Screw } from "../../../model/screw.ts";
import type { Spot } from "../../canvas.ts";
import { inMm } from "../instrument-part.ts";
import type { Segment } from "../shape.ts";
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
      ? threadedHead(height, wide, pitch)
      : plainHead(height, wide, neck, head.form === "spherical");
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

function threadedHead(height: number, wide: number, pitch: number): Segment {
  const depth = pitch * 0.8;
  const taper = Math.min(height * 0.35, wide * 0.25);
  return thread(height, {
    major: wide - taper,
    core: wide - taper - depth,
    pitch,
    taper,
    ends: "both",
  });
}

function plainHead(height: number, wide: number, neck: number, round: boolean): Segment {
  const bowl = height * 0.72;
  const half = (x: number): number => {
    const part = Math.min(1, x / bowl);
    if (!round) return neck / 2 + ((wide - neck) / 2) * part;
    return neck / 2 + ((wide - neck) / 2) * Math.sqrt(1 - (1 - part) ** 2);
  };
  const edge = (sign: number): Spot[] => [
    ...Array.from(
      { length: 13 },
      (_, index): Spot => [(bowl * index) / 12, sign * half((bowl * index) / 12)],
    ),
    [height - 0.25, (sign * wide) / 2],
    [height, sign * (wide / 2 - 0.3)],
  ];
  return {
    length: height,
    half: wide / 2,
    draw: (pen, shown) => drawProfile(pen, edge(-1), edge(1), shown),
  };
}
