import type { Instrument, InstrumentKind } from "../../model/instrument.ts";
import type { Interfaces } from "../../model/interfaces.ts";
import type { InstrumentPart } from "./instrument-part.ts";
import { bendingTool } from "./instruments/bending-tool.ts";
import { countersink } from "./instruments/countersink.ts";
import { depthGauge } from "./instruments/depth-gauge.ts";
import { drill } from "./instruments/drill.ts";
import { driverShaft } from "./instruments/driver-shaft.ts";
import { forceps } from "./instruments/forceps.ts";
import { handle } from "./instruments/handle.ts";
import { plainGuide } from "./instruments/plain-guide.ts";
import { reductionInsert } from "./instruments/reduction-insert.ts";
import { removalKit } from "./instruments/removal-kit.ts";
import { tap } from "./instruments/tap.ts";
import { threadedSleeve } from "./instruments/threaded-sleeve.ts";
import { torqueLimiter } from "./instruments/torque-limiter.ts";
import { wire } from "./instruments/wire.ts";
import type { Shape } from "./shape.ts";

/** The drawn part of every kind of instrument. */
export const instrumentParts: { readonly [K in InstrumentKind]: InstrumentPart<K> } = {
  drill,
  "plain-guide": plainGuide,
  "threaded-sleeve": threadedSleeve,
  "reduction-insert": reductionInsert,
  "depth-gauge": depthGauge,
  tap,
  countersink,
  "driver-shaft": driverShaft,
  handle,
  "torque-limiter": torqueLimiter,
  "bending-tool": bendingTool,
  forceps,
  wire,
  "removal-kit": removalKit,
};

/** The silhouette of an instrument, true size in mm; `end` names the end of a guide that stands to the left. */
export function instrumentShape(
  instrument: Instrument,
  interfaces: Interfaces,
  end?: string,
): Shape {
  return shapeBy(instrument.kind, instrument, interfaces, end);
}

function shapeBy<K extends InstrumentKind>(
  kind: K,
  instrument: Instrument,
  interfaces: Interfaces,
  end?: string,
): Shape {
  const part: InstrumentPart<K> = instrumentParts[kind];
  return part.shape(instrument as Parameters<typeof part.shape>[0], interfaces, end);
}
