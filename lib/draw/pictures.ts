import type { Pictures } from "../model/figure.ts";
import { drawnOnce } from "./drawn-once.ts";
import { alikePair } from "./figures/alike-pair.ts";
import { backTable } from "./figures/back-table.ts";
import { bendMark } from "./figures/bend-mark.ts";
import { cardCode } from "./figures/card-code.ts";
import { deadReading } from "./figures/dead-reading.ts";
import { hole } from "./figures/hole.ts";
import { plateMap } from "./figures/plate-map.ts";
import { plateOutline } from "./figures/plate-outline.ts";
import { plateSide } from "./figures/plate-side.ts";
import { scaleBar } from "./figures/scale-bar.ts";
import { screw } from "./figures/screw.ts";
import { section } from "./figures/section.ts";
import { sign } from "./figures/sign.ts";
import { step } from "./figures/step.ts";
import { trayMap } from "./figures/tray-map.ts";
import { wholeInstrument } from "./figures/whole-instrument.ts";
import { workingEnd } from "./figures/working-end.ts";
import { keptFigures } from "./kept-figures.ts";
import { textWidth } from "./text-widths.ts";

/** Every drawing that composing may ask for, drawn anew each time. */
export const drawings: Pictures = {
  textWidth,
  hole,
  bendMark,
  workingEnd,
  wholeInstrument,
  screw,
  section,
  deadReading,
  plateSide,
  alikePair,
  backTable,
  plateMap,
  plateOutline,
  step,
  trayMap,
  sign,
  scaleBar,
  cardCode,
};

/** What setting up names as the file for figures of this state of the code; none in tests. */
const file = process.env["TRAYLEAF_FIGURES"];
const kept = file === undefined ? undefined : keptFigures(file);
if (kept) process.on("exit", () => kept.save());

/** Every drawing that composing may ask for; what is drawn the same on many sheets is drawn once, and not again in the next run. */
export const pictures: Pictures = drawnOnce(drawings, kept);
