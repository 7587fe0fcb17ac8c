import { type InstrumentPart, inMm, sampleSource } from "../instrument-part.ts";
import { cone } from "../segments/cone.ts";
import { grip } from "../segments/grip.ts";
import { drawProfile } from "../segments/profile.ts";
import { rod } from "../segments/rod.ts";
import type { Segment } from "../shape.ts";

/** A bending lever: a flat head with a slot for the plate, a bar, a ribbed grip. */
export const bendingTool: InstrumentPart<"bending-tool"> = {
  id: "bending-tool",
  label: "bending tool",
  shape(instrument) {
    const length = inMm(instrument.length);
    const held = length * 0.38;
    return {
      segments: [
        slotted(19, 13, 4, 10),
        cone(5, 13, 8, "none"),
        rod(Math.max(2, length - held - 24), 8, { ends: "right" }),
        grip(held, 11),
      ],
    };
  },
  samples: [
    {
      kind: "bending-tool",
      name: "bending lever",
      mark: "BL",
      source: sampleSource,
      purpose: "bends plates between holes",
      length: 220000,
    },
  ],
};

function slotted(length: number, high: number, slot: number, deep: number): Segment {
  const half = high / 2;
  return {
    length,
    half,
    draw(pen, shown) {
      const { from, to } = shown;
      drawProfile(
        pen,
        [
          [from, -half],
          [to, -half],
        ],
        [
          [from, half],
          [to, half],
        ],
        shown,
        "left",
        { edge: "body" },
      );
      if (shown.cutLeft) return;
      pen.line([0, -slot / 2 + 0.2], [0, slot / 2 - 0.2], { colour: "metal", stroke: "heavy" });
      const open = Math.min(deep, to);
      pen.path(
        [
          ["M", 0, -slot / 2],
          ["L", open - slot / 2, -slot / 2],
          ["A", slot / 2, 0, 1, open - slot / 2, slot / 2],
          ["L", 0, slot / 2],
        ],
        { data: { edge: "slot" } },
      );
      if (to > length - 2) pen.circle([length - 4.5, 0], 1.6);
    },
  };
}
