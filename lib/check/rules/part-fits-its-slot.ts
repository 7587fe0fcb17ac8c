import { type Catalogue, known } from "../../model/catalogue.ts";
import { mm } from "../../model/measure.ts";
import { plateTitle } from "../../model/plate-name.ts";
import type { Rule } from "../../model/rule.ts";
import type { Slot, Tray } from "../../model/tray.ts";
import { fails, passes } from "../example.ts";

/** The name and overall length of what lies in a slot, micrometres; a rack has none of its own. */
function lying(
  { instruments, plates }: Catalogue,
  slot: Slot,
): readonly [string, number] | undefined {
  if (slot.holds === "rack") return undefined;
  if (slot.holds === "instrument") {
    const { name, length } = known(instruments, slot.instrument);
    return [name, length];
  }
  const plate = known(plates, slot.plate);
  const drawn = "mirror_of" in plate ? known(plates, plate.mirror_of) : plate;
  if (!("variants" in drawn)) return undefined;
  const variant = drawn.variants.find(({ holes }) => holes === slot.holes);
  return variant && [plateTitle(plate, slot.holes), variant.length];
}

/** From corner to corner of a slot, micrometres. */
function room({ grid, size }: Tray, { span: [columns, rows] }: Slot): number {
  return Math.floor(
    Math.hypot((size.width * columns) / grid.columns, (size.height * rows) / grid.rows),
  );
}

/** What lies in a slot is not longer than the slot. */
export const partFitsItsSlot: Rule = {
  id: "part-fits-its-slot",
  severity: "sign",
  about: "tray",
  summary: "An instrument or plate is no longer than its slot is from corner to corner.",
  why: "A part that is longer than its slot lies somewhere else, or the list or the map of the tray is wrong.",
  fix: "Compare the slot's span, the tray's inner size and the part's length with the tray itself.",
  source: "common practice",
  *check({ catalogue }) {
    for (const tray of catalogue.trays.values())
      for (const [index, slot] of tray.slots.entries()) {
        const part = lying(catalogue, slot);
        const most = room(tray, slot);
        if (part && part[1] > most)
          yield {
            file: tray.file,
            path: ["slots", index, "span"],
            message: `Expected a slot of at least ${mm(part[1])} for ${part[0]}, got ${mm(most)}`,
          };
      }
  },
  examples: [
    passes("as long as the slot", "Slot 200 by 15, corner to corner 200.561; drill 200.561.", {
      "instrument/drill-25 length": 200.561,
    }),
    fails("a thousandth longer", "Slot 200 by 15, corner to corner 200.561; drill 200.562.", {
      "instrument/drill-25 length": 200.562,
    }),
  ],
};
