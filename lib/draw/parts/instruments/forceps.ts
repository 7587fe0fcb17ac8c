import type { PathPiece, Pen, Spot } from "../../canvas.ts";
import { type InstrumentPart, inMm, sampleSource } from "../instrument-part.ts";
import type { Segment } from "../shape.ts";

const jaw = 24;
const spread = 12;
/** Half of an arm's width. */
const half = 1.6;

/** Forceps with pointed jaws: curved jaws to a joint, two arms, two finger rings. */
export const forceps: InstrumentPart<"forceps"> = {
  id: "forceps",
  label: "forceps",
  shape(instrument) {
    const length = inMm(instrument.length);
    return { segments: [jaws(), arms(Math.max(4, length - jaw - 26)), rings()] };
  },
  samples: [
    {
      kind: "forceps",
      name: "pointed forceps",
      mark: "PF",
      source: sampleSource,
      purpose: "holds fragments",
      length: 180000,
    },
  ],
};

function jaws(): Segment {
  return {
    length: jaw,
    half: 6.6,
    draw(pen, { to }) {
      for (const sign of [-1, 1]) {
        const blade: PathPiece[] = [
          ["M", 0.1, sign * 0.3],
          ["C", 1, sign * 3.8, 5, sign * 6.4, 9, sign * 6.2],
          ["C", 14, sign * 5.9, 17, sign * 3, jaw, sign * -2.2],
          ["L", jaw, sign * -5.4],
          ["C", 18, sign * -0.6, 14, sign * 3.1, 9, sign * 3.5],
          ["C", 5.5, sign * 3.7, 2.6, sign * 2.6, 1.1, sign * 0.4],
          ["Z"],
        ];
        if (to >= jaw - 0.1) pen.path(blade, { fill: "metal", data: { edge: "jaw" } });
        else pen.path(blade.slice(0, 2), { data: { edge: "jaw" } });
      }
      if (to >= jaw - 0.1) pen.circle([19.2, 0], 1.5, { fill: "metal" });
    },
  };
}

function arms(length: number): Segment {
  const middle = (x: number): number => 3.8 + ((spread - 3.8) * x) / length;
  return {
    length,
    half: spread + 2,
    halfAt: (x) => middle(x) + half,
    draw(pen, { from, to }) {
      for (const sign of [-1, 1])
        drawArm(pen, [from, sign * middle(from)], [to, sign * middle(to)]);
    },
  };
}

/** A stretch of an arm between the middles of its two ends. */
function drawArm(pen: Pen, [ax, ay]: Spot, [bx, by]: Spot): void {
  const edges = [half, -half].map((off): readonly [Spot, Spot] => [
    [ax, ay + off],
    [bx, by + off],
  ]);
  pen.polygon([...edges.map(([start]) => start), ...edges.map(([, end]) => end).toReversed()], {
    fill: "metal",
    stroke: "none",
  });
  for (const edge of edges) pen.polyline(edge, { data: { edge: "arm" } });
}

function rings(): Segment {
  return {
    length: 26,
    half: spread + 11,
    draw(pen, { from }) {
      if (from > 0.1) return;
      for (const sign of [-1, 1]) {
        drawArm(pen, [0, sign * spread], [3, sign * spread]);
        drawRing(pen, [12, sign * spread]);
      }
    },
  };
}

function drawRing(pen: Pen, centre: Spot): void {
  pen.circle(centre, 11, { fill: "metal" });
  pen.circle(centre, 8, { fill: "metal" });
}
