import { type InstrumentPart, inMm, sampleSource } from "../instrument-part.ts";
import { bored } from "../segments/bored.ts";
import { grip } from "../segments/grip.ts";
import { rod } from "../segments/rod.ts";

/** A tube that goes into the gliding hole and guides the pilot drill; a collar stops it. */
export const reductionInsert: InstrumentPart<"reduction-insert"> = {
  id: "reduction-insert",
  label: "insert",
  shape(instrument) {
    const bore = inMm(instrument.bore);
    const outer = inMm(instrument.outer);
    const length = inMm(instrument.length);
    const collar = Math.min(6, length * 0.2);
    return {
      segments: [
        bored(rod(length - collar, outer, { chamfer: Math.min(0.3, (outer - bore) / 3) }), bore),
        bored(grip(collar, outer + 3), bore),
      ],
      focus: { from: length - collar - 4, to: length },
    };
  },
  samples: [
    {
      kind: "reduction-insert",
      name: "insert 3.5 / 2.5",
      mark: "3.5/2.5",
      source: sampleSource,
      outer: 3400,
      bore: 2600,
      length: 48000,
    },
  ],
};
