import { driveOf, driveView } from "../drive-view.ts";
import { type InstrumentPart, inMm, sampleSource } from "../instrument-part.ts";
import { grip } from "../segments/grip.ts";
import { rod } from "../segments/rod.ts";
import { thread } from "../segments/thread.ts";

/** What takes out a screw whose drive no longer holds: the sections of every drive it serves, a tapered extractor, shaft and grip. */
export const removalKit: InstrumentPart<"removal-kit"> = {
  id: "removal-kit",
  label: "removal kit",
  shape(instrument, interfaces) {
    const drives = instrument.drives.map((id) => driveOf(interfaces, id));
    const small = Math.min(...drives.map((drive) => drive.across));
    const length = inMm(instrument.length);
    const held = Math.min(45, length * 0.4);
    const core = small * 0.75;
    return {
      endViews: drives.map((drive) => driveView(drive.form, drive.across)),
      segments: [
        thread(12, {
          major: small * 1.05,
          core,
          pitch: 1.1,
          tip: core * 0.6,
          lead: 6,
          taper: small * 0.45,
          ends: "both",
        }),
        rod(Math.max(2, length - held - 12), small * 1.7),
        grip(held, small * 1.7 + 8),
      ],
    };
  },
  samples: [
    {
      kind: "removal-kit",
      name: "removal kit",
      mark: "RK",
      source: sampleSource,
      drives: ["hexalobular-10", "hexalobular-20"],
      length: 150000,
    },
  ],
};
