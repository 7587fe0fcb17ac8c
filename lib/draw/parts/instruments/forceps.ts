import type { InstrumentOf } from "../../../model/instrument.ts";
import type { PathPiece, Pen, Spot } from "../../canvas.ts";
import { type InstrumentPart, inMm, sampleSource } from "../instrument-part.ts";
import type { Segment } from "../shape.ts";

const jaw = 24;
const spread = 12;
/** Half of an arm's width. */
const half = 1.6;

type Jaws = InstrumentOf<"forceps">["jaws"];
/** Flat pads: half of what stays between them, how long each is, and where its ridges stand, mm. */
const [padsApart, padLength] = [1.8, 6.4];
const ridges = [1.5, 2.8, 4.1, 5.4];

/** Forceps: curved jaws, pointed or with flat pads, to a joint, two arms, two finger rings. */
export const forceps: InstrumentPart<"forceps"> = {
  id: "forceps",
  label: "forceps",
  shape(instrument) {
    const length = inMm(instrument.length);
    return { segments: [jaws(instrument.jaws), arms(Math.max(4, length - jaw - 26)), rings()] };
  },
  samples: [
    {
      kind: "forceps",
      name: "pointed forceps",
      mark: "PF",
      source: sampleSource,
      purpose: "holds fragments",
      jaws: "pointed",
      length: 180000,
    },
    {
      kind: "forceps",
      name: "plate-holding forceps",
      mark: "HF",
      source: sampleSource,
      purpose: "holds a plate on the bone",
      jaws: "flat",
      length: 190000,
    },
  ],
};

/** One jaw's outline on the side `sign` of the middle, true mm: a curve to a point, or one that ends in a flat pad. */
const blades: Readonly<Record<Jaws, (sign: number) => readonly PathPiece[]>> = {
  pointed: (sign) => [
    ["M", 0.1, sign * 0.3],
    ["C", 1, sign * 3.8, 5, sign * 6.4, 9, sign * 6.2],
    ["C", 14, sign * 5.9, 17, sign * 3, jaw, sign * -2.2],
    ["L", jaw, sign * -5.4],
    ["C", 18, sign * -0.6, 14, sign * 3.1, 9, sign * 3.5],
    ["C", 5.5, sign * 3.7, 2.6, sign * 2.6, 1.1, sign * 0.4],
    ["Z"],
  ],
  flat: (sign) => [
    ["M", 0.3, sign * padsApart],
    ["L", 0.3, sign * 4.5],
    ["C", 2, sign * 6.6, 7, sign * 7.2, 10, sign * 6.7],
    ["C", 15, sign * 6.1, 17.5, sign * 3, jaw, sign * -2.2],
    ["L", jaw, sign * -5.4],
    ["C", 17.5, sign * -0.6, 14, sign * 3.6, 9.5, sign * 4.1],
    ["C", 8.2, sign * 4.3, 7.2, sign * 4.1, padLength, sign * 3.6],
    ["L", padLength, sign * padsApart],
    ["Z"],
  ],
};

function jaws(form: Jaws): Segment {
  return {
    length: jaw,
    half: 6.9,
    draw(pen, { to }) {
      const whole = to >= jaw - 0.1;
      for (const sign of [-1, 1]) {
        const blade = blades[form](sign);
        if (whole) pen.path(blade, { fill: "metal", data: { edge: "jaw", form } });
        else pen.path(blade.slice(0, 3), { data: { edge: "jaw", form } });
        if (form === "flat")
          for (const x of ridges)
            pen.line([x, sign * padsApart], [x, sign * (padsApart + 1.5)], { stroke: "hair" });
      }
      if (whole) pen.circle([19.2, 0], 1.5, { fill: "metal" });
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
