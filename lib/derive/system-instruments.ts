import type { Catalogue } from "../model/catalogue.ts";
import type { Defined } from "../model/definition.ts";
import type { Instrument } from "../model/instrument.ts";
import { inIdOrder } from "./in-id-order.ts";

/** The instruments a system works with, its own and the general ones, in id order. */
export function systemInstruments(
  { instruments }: Catalogue,
  system: string,
): readonly Defined<Instrument>[] {
  return inIdOrder(instruments).filter(
    (instrument) => instrument.system === system || instrument.system === "general",
  );
}
