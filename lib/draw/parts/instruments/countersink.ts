import type { Spot } from "../../canvas.ts";
import { couplingWidth, type InstrumentPart, inMm, sampleSource } from "../instrument-part.ts";
import { coupling } from "../segments/coupling.ts";
import { drawProfile } from "../segments/profile.ts";
import { rod } from "../segments/rod.ts";
import type { Segment } from "../shape.ts";

/** A countersink: a pilot tip, a cutter of the head's own form, shank and coupling. */
export const countersink: InstrumentPart<"countersink"> = {
  id: "countersink",
  label: "countersink",
  shape(instrument, interfaces) {
    const pilot = inMm(instrument.pilot);
    const head = inMm(instrument.head);
    const lead = 6;
    const cut = instrument.form === "spherical" ? head / 2 : (head - pilot) / 2;
    const length = inMm(instrument.length);
    return {
      segments: [
        rod(lead, pilot, { chamfer: pilot * 0.2 }),
        cutter(cut, pilot / 2, head / 2, instrument.form === "spherical"),
        rod(2.5, head),
        rod(Math.max(6, length - lead - cut - 16.5), Math.max(pilot, head * 0.55)),
        ...coupling(14, couplingWidth(interfaces, instrument.coupling)),
      ],
    };
  },
  samples: [
    {
      kind: "countersink",
      name: "countersink 3.5",
      mark: "3.5",
      source: sampleSource,
      pilot: 2500,
      head: 6000,
      form: "spherical",
      length: 100000,
      coupling: "shaft-small",
    },
  ],
};

function cutter(length: number, small: number, large: number, round: boolean): Segment {
  const half = (x: number): number => {
    const part = Math.min(1, Math.max(0, x / length));
    return small + (large - small) * (round ? Math.sqrt(1 - (1 - part) ** 2) : part);
  };
  const edge = (part: number, from: number, to: number): Spot[] =>
    Array.from({ length: 13 }, (_, index) => from + ((to - from) * index) / 12).map((x) => [
      x,
      part * half(x),
    ]);
  return {
    length,
    half: large,
    draw(pen, shown) {
      drawProfile(pen, edge(-1, shown.from, shown.to), edge(1, shown.from, shown.to), shown);
      for (const part of [-0.5, 0, 0.5])
        pen.polyline(edge(part, shown.from, shown.to), {
          stroke: "hair",
          data: { edge: "cutting-edge" },
        });
    },
  };
}
