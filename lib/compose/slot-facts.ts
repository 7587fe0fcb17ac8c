import { type Catalogue, known } from "../model/catalogue.ts";
import type { Defined } from "../model/definition.ts";
import { wholeMm } from "../model/measure.ts";
import { plateTitle } from "../model/plate-name.ts";
import { rackPieces } from "../model/rack-pieces.ts";
import type { Screw } from "../model/screw.ts";
import type { Slot } from "../model/tray.ts";
import { spoken } from "./spoken.ts";
import { unparted } from "./unparted.ts";

/** What lies in a slot, its etched mark and its pieces, in words. */
export function slotFacts(
  catalogue: Catalogue,
  slot: Slot,
): { readonly id: string; readonly what: string; readonly mark: string; readonly pieces: number } {
  if (slot.holds === "instrument") {
    const instrument = known(catalogue.instruments, slot.instrument);
    return {
      id: slot.instrument,
      what: spoken(instrument),
      mark: instrument.mark,
      pieces: slot.quantity,
    };
  }
  if (slot.holds === "plate") {
    const plate = known(catalogue.plates, slot.plate);
    return {
      id: slot.plate,
      what: unparted(plateTitle(plate, slot.holes)),
      mark: plate.mark,
      pieces: slot.quantity,
    };
  }
  const screw: Defined<Screw> = known(catalogue.screws, slot.screw);
  const lengths = rackPieces(screw, slot);
  const [first, last] = [lengths[0], lengths.at(-1)];
  const span = first && last ? ` ${wholeMm(first.length)}–${wholeMm(last.length)}` : "";
  return {
    id: slot.screw,
    what: `${screw.called}${span}`,
    mark: screw.mark,
    pieces: lengths.reduce((sum, { pieces }) => sum + pieces, 0),
  };
}
