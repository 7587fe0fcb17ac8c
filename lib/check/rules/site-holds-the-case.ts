import { type Catalogue, known } from "../../model/catalogue.ts";
import { plateTitle } from "../../model/plate-name.ts";
import type { Rule, RuleInput } from "../../model/rule.ts";
import type { Case, Site } from "../../model/site.ts";
import type { Slot } from "../../model/tray.ts";

type Part = { readonly id: string; readonly name: string };

const heldBy = (slot: Slot): string =>
  slot.holds === "instrument"
    ? slot.instrument
    : slot.holds === "rack"
      ? slot.screw
      : `${slot.plate} ${slot.holes}`;

function needed({ catalogue, derived }: RuleInput, { plan, plate, holes }: Case): readonly Part[] {
  const chains = derived.chains.filter(({ zone, screw, recipe }) =>
    plan.some((line) => line.zone === zone && line.screw === screw && line.recipe === recipe),
  );
  const tools = new Set(
    chains.flatMap(({ links }) => links.flatMap(({ instrument }) => instrument ?? [])),
  );
  const screws = new Set(plan.map(({ screw }) => screw));
  return [
    { id: `${plate} ${holes}`, name: plateTitle(known(catalogue.plates, plate), holes) },
    ...[...screws].map((id) => ({ id, name: known(catalogue.screws, id).called })),
    ...[...tools].map((id) => ({ id, name: known(catalogue.instruments, id).name })),
  ];
}

type State = "in tray" | "not checked" | "missing";

function stateAt({ trays }: Catalogue, site: Site, { id }: Part): State {
  const states = site.trays
    .filter(({ tray }) => known(trays, tray).slots.some((slot) => heldBy(slot) === id))
    .map(
      (one): State =>
        one.absent.includes(id)
          ? "missing"
          : one.not_checked.includes(id)
            ? "not checked"
            : "in tray",
    );
  return (["in tray", "not checked"] as const).find((state) => states.includes(state)) ?? "missing";
}

/** What a case needs is there at its site: the trays as they stand, not as they were packed. */
export const siteHoldsTheCase: Rule = {
  id: "site-holds-the-case",
  severity: "note",
  about: "case",
  summary: "Everything a case needs has been seen in the trays of its site.",
  why: "A sleeve that is missing tomorrow is better known tonight. What nobody looked for is not there yet. The sheet prints both.",
  fix: "Fetch what is missing, look for what was not checked, then correct the site's file.",
  source: "J Am Coll Surg 2014;219:646 (instrument errors in theatre)",
  needsAll: ["instrument", "tray"],
  *check(input) {
    for (const planned of input.catalogue.cases.values()) {
      const site = known(input.catalogue.sites, planned.site);
      for (const part of needed(input, planned)) {
        const state = stateAt(input.catalogue, site, part);
        if (state === "in tray") continue;
        yield {
          file: planned.file,
          path: ["site"],
          message: `${state === "missing" ? "Missing for this case" : "Not checked"}: ${part.name} at ${site.name}`,
        };
      }
      for (const [index, { screw, lengths }] of planned.plan.entries()) {
        const gone = site.trays
          .flatMap(({ empty_lengths }) => empty_lengths)
          .filter(
            (one) =>
              one.screw === screw &&
              lengths &&
              one.length >= lengths[0] &&
              one.length <= lengths[1],
          );
        for (const { length } of gone)
          yield {
            file: planned.file,
            path: ["plan", index, "lengths"],
            message: `Missing for this case: ${known(input.catalogue.screws, screw).called} in length ${length / 1000} at ${site.name}`,
          };
      }
    }
  },
  examples: [
    {
      title: "everything seen",
      passes: true,
      shows: "Nothing absent, everything looked for.",
      edits: [
        { file: "site/brackenhollow", path: ["trays", 0, "absent"], value: [] },
        { file: "site/brackenhollow", path: ["trays", 0, "not_checked"], value: [] },
      ],
    },
    {
      title: "a missing sleeve",
      passes: false,
      shows: "Sleeve 3.5 is absent from the tray at the site.",
      edits: [{ file: "site/brackenhollow", path: ["trays", 0, "absent"], value: ["sleeve-35"] }],
    },
    {
      title: "a sleeve nobody looked for",
      passes: false,
      shows: "Sleeve 3.5 was not checked.",
      edits: [
        { file: "site/brackenhollow", path: ["trays", 0, "not_checked"], value: ["sleeve-35"] },
      ],
    },
  ],
};
