import { known } from "../../model/catalogue.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

const kilograms = (grams: number): string => `${grams / 1000} kg`;

/** A tray is no heavier than a site lifts. */
export const trayCanBeLifted: Rule = {
  id: "tray-can-be-lifted",
  severity: "note",
  about: "tray",
  summary: "Where a tray's weight and a site's limit are both known, the tray is not heavier.",
  why: "A tray that is too heavy is set down hard, or does not dry; the site sets the limit, not this library.",
  fix: "Tell the site, split the tray, or correct weight or lift_limit.",
  source:
    "a limit of 25 lb (11.3 kg) is quoted for containerised sets on loan-set pages that cite AAMI ST79",
  *check({ catalogue }) {
    for (const { file, name, trays, lift_limit } of catalogue.sites.values()) {
      for (const [index, { tray: id }] of trays.entries()) {
        const tray = known(catalogue.trays, id);
        if (tray.weight !== undefined && lift_limit !== undefined && tray.weight > lift_limit)
          yield {
            file,
            path: ["trays", index, "tray"],
            message: `Expected ${tray.name} at ${kilograms(lift_limit)} or less for ${name}, got ${kilograms(tray.weight)}`,
          };
      }
    }
  },
  examples: [
    passes("at the limit", "Tray 11.3 kg, limit 11.3 kg.", {
      "tray/small weight": 11.3,
      "site/brackenhollow lift_limit": 11.3,
    }),
    fails("a gram over", "Tray 11.301 kg, limit 11.3 kg.", {
      "tray/small weight": 11.301,
      "site/brackenhollow lift_limit": 11.3,
    }),
    passes("no limit known", "Tray 12.1 kg; the site states no limit.", {
      "tray/small weight": 12.1,
    }),
  ],
};
