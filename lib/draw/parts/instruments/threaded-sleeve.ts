import { type InstrumentPart, inMm, sampleSource } from "../instrument-part.ts";
import { bored } from "../segments/bored.ts";
import { cone } from "../segments/cone.ts";
import { grip } from "../segments/grip.ts";
import { rod } from "../segments/rod.ts";
import { thread } from "../segments/thread.ts";

/** A sleeve that turns into a threaded hole: its head thread by the registry's pitch, the bore dashed through, a ribbed collar to turn it by. */
export const threadedSleeve: InstrumentPart<"threaded-sleeve"> = {
  id: "threaded-sleeve",
  label: "threaded sleeve",
  shape(instrument, interfaces) {
    const found = interfaces.head_threads[instrument.thread];
    if (found === undefined)
      throw new Error(`No head thread "${instrument.thread}" in the registry`);
    const pitch = inMm(found.pitch);
    const bore = inMm(instrument.bore);
    const outer = inMm(instrument.outer);
    const length = inMm(instrument.length);
    const major = Math.min(outer - 0.4, bore + 2);
    const core = major - pitch * 0.8;
    const collar = Math.min(9, length * 0.28);
    return {
      segments: [
        bored(thread(pitch * 4.5, { major, core, pitch, ends: "both" }), bore),
        bored(rod(0.8, core), bore),
        bored(cone(1, major, outer), bore),
        bored(rod(length - collar - 1.8, outer, { ends: "right" }), bore),
        bored(grip(collar, outer + 1.8), bore),
      ],
    };
  },
  samples: [
    {
      kind: "threaded-sleeve",
      name: "threaded sleeve 3.5",
      mark: "3.5",
      source: sampleSource,
      thread: "th-35",
      bore: 2800,
      outer: 6500,
      length: 36000,
    },
  ],
};
