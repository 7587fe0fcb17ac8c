import { couplingWidth, type InstrumentPart, inMm, sampleSource } from "../instrument-part.ts";
import { coupling } from "../segments/coupling.ts";
import { flutes } from "../segments/flutes.ts";
import { bandWidth, rod } from "../segments/rod.ts";

const bandPitch = 1.5;
const markPitch = 10;

/** A twist drill: flutes, a shank with its ground rings and depth marks, the coupling. */
export const drill: InstrumentPart<"drill"> = {
  id: "drill",
  label: "drill",
  shape(instrument, interfaces) {
    const diameter = inMm(instrument.diameter);
    const reach = inMm(instrument.reach);
    const length = inMm(instrument.length);
    const fluted = Math.max(8, Math.min(reach * 0.45, reach - 16));
    const shank = reach - fluted;
    const count = instrument.bands ?? 0;
    const first = shank - 1.2 - count * bandPitch;
    const bands = Array.from({ length: count }, (_, index) => first + index * bandPitch);
    const sleeve =
      instrument.marks_for_sleeve_length === undefined
        ? reach
        : inMm(instrument.marks_for_sleeve_length);
    const rings: number[] = [];
    for (let x = sleeve + markPitch; x < fluted + first - 1; x += markPitch)
      if (x > fluted + 1) rings.push(x - fluted);
    const end = Math.max(6, length - reach);
    return {
      segments: [
        flutes(fluted, diameter),
        rod(shank, diameter, { bands, rings, ends: "right" }),
        ...coupling(end, couplingWidth(interfaces, instrument.coupling)),
      ],
      focus: { from: fluted + first - bandWidth, to: reach + 3 },
    };
  },
  samples: [
    {
      kind: "drill",
      name: "drill 2.7",
      mark: "2.7",
      source: sampleSource,
      diameter: 2700,
      use: "pilot",
      length: 150000,
      reach: 112000,
      coupling: "drill-small",
      bands: 3,
      marks_for_sleeve_length: 36000,
    },
  ],
};
