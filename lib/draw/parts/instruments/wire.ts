import { type InstrumentPart, inMm, sampleSource } from "../instrument-part.ts";
import { drawProfile } from "../segments/profile.ts";
import type { Segment } from "../shape.ts";

/** A wire at its true thickness, its tip ground to three facets or rounded. */
export const wire: InstrumentPart<"wire"> = {
  id: "wire",
  label: "wire",
  shape(instrument) {
    const diameter = inMm(instrument.diameter);
    return { segments: [stem(inMm(instrument.length), diameter, instrument.tip)] };
  },
  samples: [
    {
      kind: "wire",
      name: "wire 1.6",
      mark: "1.6",
      source: sampleSource,
      diameter: 1600,
      tip: "trocar",
      length: 150000,
    },
    {
      kind: "wire",
      name: "wire 2.0 blunt",
      mark: "2.0",
      source: sampleSource,
      diameter: 2000,
      tip: "blunt",
      length: 150000,
    },
  ],
};

function stem(length: number, diameter: number, tip: "trocar" | "blunt"): Segment {
  const half = diameter / 2;
  const point = tip === "trocar" ? diameter * 2 : half * 0.8;
  return {
    length,
    half,
    draw(pen, shown) {
      const nose = shown.cutLeft ? [] : [[0, 0] as const];
      const shoulder = tip === "blunt" && !shown.cutLeft;
      const side = (sign: number) => [
        ...nose,
        ...(shoulder ? [[point * 0.3, sign * half * 0.7] as const] : []),
        [Math.max(point, shown.from), sign * half] as const,
        [shown.to, sign * half] as const,
      ];
      drawProfile(pen, side(-1), side(1), shown, "right", { edge: "body", diameter });
      if (tip === "trocar" && shown.to > point) {
        pen.polyline(
          [
            [0, 0],
            [point * 0.72, half * 0.1],
            [point, half],
          ],
          { stroke: "hair" },
        );
      }
    },
  };
}
