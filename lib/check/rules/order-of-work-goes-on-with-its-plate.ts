import { known } from "../../model/catalogue.ts";
import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

const second = {
  name: "lower fibula plate, second part",
  families: ["lower-fibula"],
  steps: [{ id: "count", verb: "count", say: "Count instruments and pieces." }],
  source: { document: "teaching-text", section: "Order of work" },
};
const asked = { "procedure/lower-fibula goes_on_with": "lower-fibula-second" };
const given = (families: readonly string[], more: object = {}) => ({
  "procedure/lower-fibula-second": { ...second, families, ...more },
  ...asked,
});

/** An order of work on two cards goes on for the same plates, and comes to an end. */
export const orderOfWorkGoesOnWithItsPlate: Rule = {
  id: "order-of-work-goes-on-with-its-plate",
  severity: "stop",
  about: "technique",
  summary:
    "An order of work that goes on with another does so for all its plates, and never comes back to itself.",
  why: "The card names the next one; the next card of another plate has another plate's screws.",
  fix: "Name in goes_on_with the order of work that follows for these plates.",
  source: "common practice",
  *check({ catalogue: { procedures } }) {
    for (const [id, { file, name, families, goes_on_with }] of procedures) {
      if (goes_on_with === undefined) continue;
      const next = known(procedures, goes_on_with);
      const others = families.filter((family) => !next.families.includes(family));
      if (others.length > 0)
        yield {
          file,
          path: ["goes_on_with"],
          message: `Expected ${name} to go on for ${others.join(" and ")}, got ${next.name}, which is for ${next.families.join(" and ")}`,
        };
      const met = new Set([id]);
      for (
        let at: string | undefined = goes_on_with;
        at !== undefined;
        at = known(procedures, at).goes_on_with
      ) {
        if (met.has(at)) {
          yield {
            file,
            path: ["goes_on_with"],
            message: `Expected ${name} to come to an end, got back to ${known(procedures, at).name}`,
          };
          break;
        }
        met.add(at);
      }
    }
  },
  examples: [
    passes(
      "the second part for the same plates",
      "Both are for the lower fibula plates.",
      given(["lower-fibula"]),
    ),
    fails(
      "a part for another plate",
      "The second part is for a straight plate.",
      given(["straight"]),
    ),
    fails(
      "back to the first part",
      "The second part goes on with the first.",
      given(["lower-fibula"], { goes_on_with: "lower-fibula" }),
    ),
  ],
};
