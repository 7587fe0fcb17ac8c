import type { PathPiece, Pen, Spot } from "../../canvas.ts";
import { inMm, sampleSource, type InstrumentPart } from "../instrument-part.ts";
import type { Segment } from "../shape.ts";

const jaw = 34;
const spread = 16;

/** Forceps with pointed jaws: curved jaws to a joint, two arms, two finger rings. */
export const forceps: InstrumentPart<"forceps"> = {
  id: "forceps",
  label: "forceps",
  shape(instrument) {
    const length = inMm(instrument.length);
    return { segments: [jaws(), arms(length - jaw - 26), rings()] };
  },
  samples: [{ kind: "forceps", name: "pointed forceps", mark: "PF", source: sampleSource, purpose: "holds fragments", length: 180000 }],
};

function jaws(): Segment {
  return {
    length: jaw,
    half: 9,
    draw(pen, { to }) {
      for (const sign of [-1, 1]) {
        const blade: PathPiece[] = [
          ["M", 0.2, sign * 0.35],
          ["C", 1, sign * 5.5, 7, sign * 9, 13, sign * 8.6],
          ["C", 20, sign * 8.2, 25, sign * 4.4, jaw, sign * -2.2],
          ["L", jaw, sign * -5.4],
          ["C", 26, sign * 0.6, 20, sign * 4.6, 13, sign * 5.2],
          ["C", 8, sign * 5.6, 3.5, sign * 4, 1.3, sign * 0.5],
          ["Z"],
        ];
        if (to >= jaw - 0.1) pen.path(blade, { fill: "metal", data: { edge: "jaw" } });
        else pen.path(blade.slice(0, 2), { data: { edge: "jaw" } });
      }
      if (to >= jaw - 0.1) pen.circle([28.6, 0], 2.1, { fill: "metal" });
    },
  };
}

function arms(length: number): Segment {
  return {
    length,
    half: spread + 2,
    draw(pen, { from, to }) {
      const middle = (x: number): number => 3.8 + ((spread - 3.8) * x) / length;
      for (const sign of [-1, 1]) {
        const outer: Spot[] = [[from, sign * (middle(from) + 1.6)], [to, sign * (middle(to) + 1.6)]];
        const inner: Spot[] = [[to, sign * (middle(to) - 1.6)], [from, sign * (middle(from) - 1.6)]];
        pen.polygon([...outer, ...inner], { fill: "metal", stroke: "none" });
        pen.polyline(outer);
        pen.polyline(inner);
      }
    },
  };
}

function rings(): Segment {
  return {
    length: 26,
    half: spread + 11,
    draw(pen, { from }) {
      if (from > 0.1) return;
      for (const sign of [-1, 1]) drawRing(pen, [12, sign * spread]);
    },
  };
}

function drawRing(pen: Pen, centre: Spot): void {
  pen.circle(centre, 11, { fill: "metal" });
  pen.circle(centre, 8, { fill: "metal" });
}
