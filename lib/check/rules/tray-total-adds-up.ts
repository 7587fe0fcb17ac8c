import { type Catalogue, known } from "../../model/catalogue.ts";
import { rackLengths } from "../../model/rack-lengths.ts";
import type { Rule } from "../../model/rule.ts";
import type { Slot } from "../../model/tray.ts";

function pieces({ screws }: Catalogue, slot: Slot): number {
  if (slot.holds !== "rack") return slot.quantity;
  const exception = new Map(slot.except.map(({ length, quantity }) => [length, quantity]));
  return rackLengths(known(screws, slot.screw)).reduce(
    (sum, length) => sum + (exception.get(length) ?? slot.quantity),
    0,
  );
}

/** The pieces in a tray's slots add up to the total its list states. */
export const trayTotalAddsUp: Rule = {
  id: "tray-total-adds-up",
  severity: "stop",
  about: "tray",
  summary:
    "The pieces of all slots, screws counted length by length, add up to the total the tray's list states.",
  why: "The tray is counted before and after. A total that is one out stops the room until someone finds a piece that never was.",
  fix: "Count slot by slot against the maker's list, then correct the slot or the total.",
  source: "common practice",
  *check({ catalogue }) {
    for (const { file, total, slots } of catalogue.trays.values()) {
      const sum = slots.reduce((all, slot) => all + pieces(catalogue, slot), 0);
      if (sum !== total)
        yield {
          file,
          path: ["total"],
          message: `Expected a total of ${sum}, the pieces in its slots, got ${total}`,
        };
    }
  },
  examples: [
    {
      title: "slots that add up",
      passes: true,
      shows: "The stated total is the sum of the slots.",
      edits: [],
    },
    {
      title: "a total that is out",
      passes: false,
      shows: "The list states 1 piece; the slots hold more.",
      edits: [{ file: "tray/small", path: ["total"], value: 1 }],
    },
  ],
};
