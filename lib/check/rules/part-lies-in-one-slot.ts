import { type Catalogue, known } from "../../model/catalogue.ts";
import { plateTitle } from "../../model/plate-name.ts";
import type { Rule } from "../../model/rule.ts";
import type { Slot } from "../../model/tray.ts";
import { fails, passes } from "../example.ts";

function held({ instruments, screws, plates }: Catalogue, slot: Slot): string {
  if (slot.holds === "instrument") return known(instruments, slot.instrument).name;
  if (slot.holds === "rack") return known(screws, slot.screw).name;
  return plateTitle(known(plates, slot.plate), slot.holes);
}
const partOf = (slot: Slot): string =>
  slot.holds === "instrument"
    ? slot.instrument
    : slot.holds === "rack"
      ? slot.screw
      : `${slot.plate} ${slot.holes}`;

/** No part lies in two slots, in one tray or in two. */
export const partLiesInOneSlot: Rule = {
  id: "part-lies-in-one-slot",
  severity: "sign",
  about: "tray",
  summary:
    "Every instrument, every rack and every length of every plate has one slot in all the trays.",
  why: "A part that is listed twice is most often a slip of the pen: one of the two slots holds something else, and whoever packs by the list packs it wrongly.",
  fix: "Look into both slots. Correct the one that holds another part; sign where the maker really packs the part twice.",
  source: "common practice",
  *check({ catalogue }) {
    const met = new Map<string, string>();
    for (const { file, name, slots } of catalogue.trays.values())
      for (const [index, slot] of slots.entries()) {
        const part = `${slot.holds} ${partOf(slot)}`;
        const before = met.get(part);
        met.set(part, before ?? `${slot.slot} of ${name}`);
        if (before !== undefined)
          yield {
            file,
            path: ["slots", index],
            message: `Expected one slot for ${held(catalogue, slot)}, got ${slot.slot} beside ${before}`,
          };
      }
  },
  examples: [
    passes("each part once", "Every instrument, rack and plate length has its own slot."),
    fails("an instrument twice", "Slots A1 and A2 both hold sleeve 3.5.", {
      "tray/small slots.1.instrument": "sleeve-35",
    }),
    fails("a screw in two racks", "Two racks hold locking 2.7.", {
      "tray/small slots.20.screw": "locking-27",
    }),
    fails("a plate length twice", "Two slots hold the left plate with 5 holes.", {
      "tray/small slots.22.holes": 5,
    }),
  ],
};
