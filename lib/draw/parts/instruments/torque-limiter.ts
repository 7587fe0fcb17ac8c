import { couplingWidth, type InstrumentPart, inMm, sampleSource } from "../instrument-part.ts";
import { coupling } from "../segments/coupling.ts";
import { rod } from "../segments/rod.ts";
import { socket } from "../segments/socket.ts";
import type { Segment } from "../shape.ts";

const body = 8.6;

/** A torque limiter: the socket for a shaft, a body with its scale window, the coupling for a handle. */
export const torqueLimiter: InstrumentPart<"torque-limiter"> = {
  id: "torque-limiter",
  label: "torque limiter",
  shape(instrument, interfaces) {
    const length = inMm(instrument.length);
    const input = couplingWidth(interfaces, instrument.coupling_in);
    const output = couplingWidth(interfaces, instrument.coupling_out);
    const main = Math.max(8, length - 7 - 1 - 3 - 14);
    return {
      segments: [
        socket(7, input),
        rod(1, Math.min(input * 1.5, body) - 1),
        windowed(main, instrument.torque),
        rod(3, body + 1.4, { chamfer: 0.5 }),
        ...coupling(14, output),
      ],
    };
  },
  samples: [
    {
      kind: "torque-limiter",
      name: "torque limiter 1.6",
      mark: "1.6",
      source: sampleSource,
      torque: 1600,
      coupling_in: "shaft-small",
      coupling_out: "shaft-small",
      hand_only: true,
      signal: "clicks once",
      length: 75000,
    },
  ],
};

function windowed(length: number, torque: number): Segment {
  const drum = rod(length, body, { data: { torque: torque / 1000 } });
  const left = 3;
  const right = Math.min(16, length - 3);
  const high = 4.2;
  return {
    ...drum,
    draw(pen, shown) {
      drum.draw(pen, shown);
      if (shown.from > left || shown.to < right) return;
      pen.box(
        [left, -high / 2],
        right - left,
        high,
        { fill: "metal", stroke: "line", data: { edge: "window" } },
        0.6,
      );
      const step = (right - left) / 8;
      for (let index = 1; index < 8; index += 1) {
        const x = left + index * step;
        pen.line([x, high / 2], [x, high / 2 - (index === 4 ? 1.9 : 1)], { stroke: "hair" });
      }
      const middle = left + 4 * step;
      pen.polygon(
        [
          [middle, 0],
          [middle - 0.8, -1.5],
          [middle + 0.8, -1.5],
        ],
        { fill: "ink", stroke: "none" },
      );
      for (const ring of [length - 3, length - 1.8]) {
        if (ring > right + 1 && ring < shown.to)
          pen.line([ring, -body / 2], [ring, body / 2], { stroke: "hair" });
      }
    },
  };
}
