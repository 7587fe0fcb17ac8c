import type { Pen } from "../../canvas.ts";
import { type InstrumentPart, inMm, sampleSource } from "../instrument-part.ts";
import { cone } from "../segments/cone.ts";
import { grip } from "../segments/grip.ts";
import { drawProfile } from "../segments/profile.ts";
import { rod } from "../segments/rod.ts";
import type { Segment, Shown } from "../shape.ts";

const barrel = 7;

/** A depth gauge: a hooked rod, the nose that rests on the plate, a barrel with its scale, a grip. */
export const depthGauge: InstrumentPart<"depth-gauge"> = {
  id: "depth-gauge",
  label: "depth gauge",
  shape(instrument) {
    const { scale } = instrument;
    const width = inMm(instrument.hook);
    const run = inMm(scale.to - scale.from);
    const probe = 11;
    const rest = inMm(instrument.length) - probe - 5 - run - 6;
    return {
      segments: [
        hook(probe, width),
        cone(5, Math.min(barrel - 1, width + 2.4), barrel, "both"),
        scaled(run + 6, inMm(scale.from), inMm(scale.to), inMm(scale.step)),
        grip(Math.max(10, rest), barrel + 2.5),
      ],
    };
  },
  samples: [
    {
      kind: "depth-gauge",
      name: "depth gauge 10 to 70",
      mark: "10-70",
      source: sampleSource,
      scale: { from: 10000, to: 70000, step: 2000 },
      hook: 1700,
      reads: "screw-length",
      seat: "plate-hole",
      length: 150000,
    },
  ],
};

function hook(length: number, width: number): Segment {
  const thick = width * 0.55;
  const top = -width / 2;
  return {
    length,
    half: width / 2,
    draw(pen, shown) {
      const nose = Math.min(0.9, width * 0.45);
      const data = { edge: "hook", hook: width };
      if (shown.cutLeft) {
        drawProfile(
          pen,
          [
            [shown.from, top],
            [shown.to, top],
          ],
          [
            [shown.from, top + thick],
            [shown.to, top + thick],
          ],
          shown,
          "none",
        );
        return;
      }
      pen.polygon(
        [
          [shown.to, top],
          [0, top],
          [0, top + width],
          [nose, top + thick + 0.1],
          [shown.to, top + thick],
        ],
        { fill: "metal", stroke: "none" },
      );
      pen.polyline(
        [
          [shown.to, top],
          [0, top],
          [0, top + width],
          [nose, top + thick],
          [shown.to, top + thick],
        ],
        { data },
      );
    },
  };
}

function scaled(length: number, from: number, to: number, step: number): Segment {
  const tube = rod(length, barrel);
  return {
    ...tube,
    draw(pen, shown) {
      tube.draw(pen, shown);
      for (let value = from; value <= to + 0.001; value += step)
        drawTick(pen, value, 3 + value - from, shown);
    },
  };
}

function drawTick(pen: Pen, value: number, x: number, shown: Shown): void {
  if (x < shown.from + 0.4 || x > shown.to - 0.4) return;
  const long = Math.abs(value / 10 - Math.round(value / 10)) < 0.001;
  const foot = barrel / 2;
  pen.line([x, foot], [x, foot - (long ? 3.6 : 1.7)], {
    stroke: long ? "line" : "hair",
    data: { edge: "tick", value },
  });
}
