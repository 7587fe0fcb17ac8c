import { known } from "../../model/catalogue.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** The torque limiters of a case's site are within the date of their next check. */
export const limiterIsInDate: Rule = {
  id: "limiter-is-in-date",
  severity: "sign",
  about: "case",
  summary:
    "For each tray with a torque limiter at the site of a case, the day its limiters are due for checking is known and not before the case sheet expires.",
  why: "A limiter that has drifted gives its signal too early or too late, and nobody feels it.",
  fix: "Have it checked and write the new date into limiter_due, or bring another.",
  source: "common practice",
  *check({ catalogue }) {
    for (const { code, site: id, plate, expires } of catalogue.cases.values()) {
      const site = known(catalogue.sites, id);
      const { system } = known(catalogue.plates, plate);
      for (const [index, { tray: held, limiter_due }] of site.trays.entries()) {
        const tray = known(catalogue.trays, held);
        const limits = tray.slots.some(
          (slot) =>
            slot.holds === "instrument" &&
            known(catalogue.instruments, slot.instrument).kind === "torque-limiter",
        );
        if (!limits || tray.system !== system) continue;
        if (limiter_due === undefined || limiter_due < expires)
          yield {
            file: site.file,
            path: ["trays", index, ...(limiter_due === undefined ? [] : ["limiter_due"])],
            message: `Expected limiters of ${tray.name} at ${site.name} due on ${expires} or later for ${code}, got ${limiter_due ?? "no date"}`,
          };
      }
    }
  },
  examples: [
    passes("due after the case", "The sheet expires on the 6th; the limiters are due on the 6th.", {
      "site/brackenhollow trays.0.limiter_due": "2026-10-06",
    }),
    fails(
      "due before the sheet expires",
      "The sheet expires on the 6th; the limiters are due on the 5th.",
      {
        "site/brackenhollow trays.0.limiter_due": "2026-10-05",
      },
    ),
    fails("nobody knows", "No date is written down.", {
      "site/brackenhollow trays.0.limiter_due": undefined,
    }),
  ],
};
