import type { InstrumentKind, InstrumentOf } from "../../model/instrument.ts";
import type { Interfaces } from "../../model/interfaces.ts";
import type { Shape } from "./shape.ts";

/** How one kind of instrument is drawn: its silhouette from its own data, and samples that approved pictures show. */
export type InstrumentPart<K extends InstrumentKind> = {
  readonly id: K;
  readonly label: string;
  /** `end` names the end of a guide that stands to the left. */
  shape(instrument: InstrumentOf<K>, interfaces: Interfaces, end?: string): Shape;
  readonly samples: readonly InstrumentOf<K>[];
};

/** Integer micrometres as millimetres. */
export const inMm = (length: number): number => length / 1000;

/** Width of a coupling of the registry, mm; throws (our own fault) when the registry lacks it. */
export function couplingWidth(interfaces: Interfaces, id: string): number {
  const found = interfaces.couplings[id];
  if (found === undefined) throw new Error(`No coupling "${id}" in the registry`);
  return inMm(found.across);
}

/** Where a sample's numbers come from. */
export const sampleSource = { document: "sample", section: "drawing", status: "stated" } as const;
