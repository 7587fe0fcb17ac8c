import { type Catalogue, known } from "../../model/catalogue.ts";
import type { Defined } from "../../model/definition.ts";
import type { Breach, Rule } from "../../model/rule.ts";
import type { Case } from "../../model/site.ts";
import { fails, passes } from "../example.ts";

function* otherGenerations(catalogue: Catalogue, planned: Defined<Case>): Generator<Breach> {
  const { system } = known(catalogue.plates, planned.plate);
  const site = known(catalogue.sites, planned.site);
  const card = catalogue.systems.get(system);
  for (const [index, { tray: id, generation_seen, revision_seen }] of site.trays.entries()) {
    const tray = known(catalogue.trays, id);
    if (card === undefined || tray.system !== system) continue;
    if (generation_seen !== card.generation)
      yield {
        file: site.file,
        path: ["trays", index, "generation_seen"],
        message: `Expected generation ${card.generation} of ${tray.name} for ${planned.code}, got generation ${generation_seen} at ${site.name}`,
      };
    else if (revision_seen !== tray.revision)
      yield {
        file: site.file,
        path: ["trays", index, "revision_seen"],
        severity: "sign",
        message: `Expected revision ${tray.revision} of ${tray.name} for ${planned.code}, got revision ${revision_seen} at ${site.name}`,
      };
  }
}

/** Card, trays and screws of a case are of one generation. */
export const generationIsOne: Rule = {
  id: "generation-is-one",
  severity: "stop",
  about: "case",
  summary:
    "The trays seen at a case's site are of the generation the card was made for, and of the revision it maps.",
  why: "Sleeves of two generations look alike and their threads differ; a tray of another revision has its slots elsewhere.",
  fix: "Make the card for the generation that is there, or exchange the tray; then correct the site's file.",
  source: "common practice",
  *check({ catalogue }) {
    for (const planned of catalogue.cases.values()) yield* otherGenerations(catalogue, planned);
  },
  examples: [
    passes("one generation", "Card for generation 2; the tray at the site is generation 2."),
    fails("an older tray", "Card for generation 2; the tray at the site is generation 1.", {
      "site/brackenhollow trays.0.generation_seen": 1,
    }),
    fails("another revision", "The card maps revision 4; the tray at the site is revision 3.", {
      "site/brackenhollow trays.0.revision_seen": "3",
    }),
  ],
};
