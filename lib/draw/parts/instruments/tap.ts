import { couplingWidth, type InstrumentPart, inMm, sampleSource } from "../instrument-part.ts";
import { coupling } from "../segments/coupling.ts";
import { rod } from "../segments/rod.ts";
import { thread } from "../segments/thread.ts";
import type { Segment } from "../shape.ts";

/** A tap: its thread a true zigzag with a cutting lead and a straight flute, then shank and coupling. */
export const tap: InstrumentPart<"tap"> = {
  id: "tap",
  label: "tap",
  shape(instrument, interfaces) {
    const major = inMm(instrument.diameter);
    const pitch = inMm(instrument.pitch);
    const length = inMm(instrument.length);
    const core = major - pitch * 0.85;
    const cut = Math.min(length * 0.35, 40);
    const across = couplingWidth(interfaces, instrument.coupling);
    return {
      segments: [
        fluted(
          thread(cut, { major, core, pitch, lead: pitch * 3.5, tip: core * 0.72, ends: "left" }),
          core,
        ),
        rod(Math.max(1, length - cut - 14), core),
        ...coupling(14, across),
      ],
    };
  },
  samples: [
    {
      kind: "tap",
      name: "tap 3.5",
      mark: "3.5",
      source: sampleSource,
      diameter: 3500,
      pitch: 1250,
      length: 110000,
      coupling: "shaft-small",
    },
  ],
};

function fluted(segment: Segment, core: number): Segment {
  return {
    ...segment,
    draw(pen, shown) {
      segment.draw(pen, shown);
      const left = Math.max(shown.from, 0.8);
      const right = Math.min(shown.to, segment.length - 1.5);
      const high = Math.max(0.35, core * 0.16);
      if (right > left)
        pen.box([left, -high / 2], right - left, high, {
          fill: "ink",
          stroke: "none",
          data: { edge: "flute" },
        });
    },
  };
}
