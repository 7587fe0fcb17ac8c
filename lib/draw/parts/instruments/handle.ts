import { couplingWidth, type InstrumentPart, inMm, sampleSource } from "../instrument-part.ts";
import { grip } from "../segments/grip.ts";
import { rod } from "../segments/rod.ts";
import { socket } from "../segments/socket.ts";

/** A handle: the socket for a shaft, a neck and a ribbed grip with a turning cap. */
export const handle: InstrumentPart<"handle"> = {
  id: "handle",
  label: "handle",
  shape(instrument, interfaces) {
    const across = couplingWidth(interfaces, instrument.coupling);
    const length = inMm(instrument.length);
    const wide = across * 1.5 + 3;
    return {
      segments: [
        socket(12, across),
        rod(1.4, across * 1.2),
        grip(Math.max(4, length - 12 - 1.4 - 9), wide),
        rod(2, wide * 0.6),
        rod(7, wide * 0.9, { chamfer: 1.2 }),
      ],
    };
  },
  samples: [
    {
      kind: "handle",
      name: "handle small",
      mark: "H-S",
      source: sampleSource,
      coupling: "shaft-small",
      length: 110000,
    },
  ],
};
