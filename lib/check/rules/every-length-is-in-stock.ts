import { known } from "../../model/catalogue.ts";
import { wholeMm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** No length of a rack is empty, neither as the maker packs it nor as a site has it. */
export const everyLengthIsInStock: Rule = {
  id: "every-length-is-in-stock",
  severity: "sign",
  about: "tray",
  summary: "Every length of a rack has a piece in it, in the tray's list and at each site.",
  why: "An empty length is noticed with the hole drilled; the next length up stands proud on the far side.",
  fix: "Refill it and correct the file, or tell the surgeon before drilling.",
  source: "common practice",
  *check({ catalogue }) {
    for (const { file, name, slots } of catalogue.trays.values()) {
      for (const [index, slot] of slots.entries()) {
        if (slot.holds !== "rack") continue;
        for (const [place, { length, quantity }] of slot.except.entries())
          if (quantity === 0)
            yield {
              file,
              path: ["slots", index, "except", place, "quantity"],
              message: `${known(catalogue.screws, slot.screw).called}, length ${wholeMm(length)}, is empty in ${name}`,
            };
      }
    }
    for (const { file, name, trays } of catalogue.sites.values()) {
      for (const [index, { empty_lengths }] of trays.entries())
        for (const [place, { screw, length }] of empty_lengths.entries())
          yield {
            file,
            path: ["trays", index, "empty_lengths", place],
            message: `${known(catalogue.screws, screw).called}, length ${wholeMm(length)}, is empty at ${name}: tell the surgeon before drilling`,
          };
    }
  },
  examples: [
    passes("two of a length", "Length 36: 2 pieces.", {
      "tray/small slots.20.except": [{ length: 36, quantity: 2 }],
    }),
    fails("none of a length", "Length 36: 0 pieces.", {
      "tray/small slots.20.except": [{ length: 36, quantity: 0 }],
    }),
    fails("a length that is empty at the site", "Length 36 was empty when the tray was checked.", {
      "site/brackenhollow trays.0.empty_lengths": [{ screw: "cortical-35", length: 36 }],
    }),
  ],
};
