import { driveOf, driveView } from "../drive-view.ts";
import { couplingWidth, type InstrumentPart, inMm, sampleSource } from "../instrument-part.ts";
import { cone } from "../segments/cone.ts";
import { coupling } from "../segments/coupling.ts";
import { driveTip } from "../segments/drive-tip.ts";
import { rod } from "../segments/rod.ts";

/** A driver shaft: the section of its tip seen from the end, the tip, a shaft, the coupling; a holding sleeve where it has one. */
export const driverShaft: InstrumentPart<"driver-shaft"> = {
  id: "driver-shaft",
  label: "driver",
  shape(instrument, interfaces) {
    const drive = driveOf(interfaces, instrument.drive);
    const tip = Math.max(3.5, drive.across * 1.3);
    const shaft = drive.across * 1.45;
    const across = couplingWidth(interfaces, instrument.coupling);
    const rest = Math.max(4, inMm(instrument.length) - tip - 2 - 16);
    const sleeve = instrument.holding_sleeve
      ? [rod(Math.min(30, rest * 0.4), shaft + 2.4, { chamfer: 0.5 })]
      : [];
    const covered = sleeve.reduce((sum, segment) => sum + segment.length, 0);
    return {
      endViews: [driveView(drive.form, drive.across)],
      segments: [
        driveTip(tip, drive.across),
        cone(2, drive.across, shaft, "left"),
        ...sleeve,
        rod(rest - covered, shaft, { ends: sleeve.length > 0 ? "both" : "right" }),
        ...coupling(16, across),
      ],
    };
  },
  samples: [
    {
      kind: "driver-shaft",
      name: "driver 20",
      mark: "20",
      source: sampleSource,
      drive: "hexalobular-20",
      coupling: "shaft-small",
      length: 120000,
      holding_sleeve: false,
    },
  ],
};
