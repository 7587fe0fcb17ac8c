import { known } from "../../model/catalogue.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

const seen = (tray: string) => ({
  tray,
  generation_seen: 2,
  revision_seen: "4",
  checked: { date: "2026-10-01", role: "instrument educator" },
});

/** A site names each tray once. */
export const siteListsEachTrayOnce: Rule = {
  id: "site-lists-each-tray-once",
  severity: "sign",
  about: "case",
  summary: "A site lists no tray twice.",
  why: "With a tray listed twice one of the two is another tray: what lies in it is then missing, or is looked for where it is not.",
  fix: "Read the mark on both trays; sign where the hospital owns two of the same.",
  source: "common practice",
  *check({ catalogue }) {
    for (const { file, name, trays } of catalogue.sites.values()) {
      const met = new Set<string>();
      for (const [index, { tray }] of trays.entries()) {
        if (met.has(tray))
          yield {
            file,
            path: ["trays", index, "tray"],
            message: `Expected ${known(catalogue.trays, tray).name} once at ${name}, got it twice`,
          };
        met.add(tray);
      }
    }
  },
  examples: [
    passes("each once", "One tray, listed once."),
    fails("a tray twice", "The small tray is listed twice.", {
      "site/brackenhollow trays": [seen("small"), seen("small")],
    }),
  ],
};
