import { known } from "../../model/catalogue.ts";
import type { Breach, Rule, RuleInput } from "../../model/rule.ts";
import { citations } from "../citations.ts";
import { fails, passes } from "../example.ts";

const other = {
  "system/gatepost": {
    name: "Gatepost",
    maker: "Oakwhistle Demo Works (fictional)",
    generation: 1,
    generation_mark: "One ring on the tray handle.",
    sizes: "4.5",
    units: { length: "mm", torque: "N·m" },
    documents: ["gatepost-ifu"],
    tray_revision: "2",
    cards: { prefix: "GP", issue: "A", date: "2026-10-01", review_by: "2027-10-01" },
  },
  "document/gatepost-ifu": {
    title: "Gatepost instructions for use",
    kind: "instructions-for-use",
    system: "gatepost",
    issue: "A",
    date: "2026-09-01",
  },
};

/** What a system's own list of documents, printed on its cards, leaves out or has too many. */
function* listed({ catalogue }: RuleInput): Generator<Breach> {
  for (const { id, file, name, documents } of catalogue.systems.values()) {
    for (const [index, document] of documents.entries()) {
      const { title, system } = known(catalogue.documents, document);
      if (system !== id)
        yield {
          file,
          path: ["documents", index],
          message: `Expected a document of ${name}, got ${title}`,
        };
    }
    for (const { id: document, title, system, superseded_by } of catalogue.documents.values())
      if (system === id && superseded_by === undefined && !documents.includes(document))
        yield { file, path: ["documents"], message: `Missing among the documents: ${title}` };
  }
}

/** A part is cited to documents of its own system, and a system lists them all. */
export const sourceIsOfItsOwnSystem: Rule = {
  id: "source-is-of-its-own-system",
  severity: "stop",
  about: "sheet",
  summary:
    "No part, tray, procedure or policy of one system is cited to a document of another; a system lists every document of its own that no later one supersedes.",
  why: "A number taken from the other system's instructions is a number nobody has checked for this one, and a document that is not listed is not named on any card.",
  fix: "Cite the document of the part's own system; correct documents in the system's file.",
  source: "common practice",
  *check(input) {
    const { catalogue } = input;
    yield* listed(input);
    for (const { file, system, path, citation } of citations(catalogue)) {
      const document = catalogue.documents.get(citation.document);
      if (document === undefined || !catalogue.systems.has(system)) continue;
      if (["general", system].includes(document.system)) continue;
      yield {
        file,
        path: [...path, "document"],
        message: `Expected a document of ${known(catalogue.systems, system).name}, got ${document.title}`,
      };
    }
  },
  examples: [
    passes("each its own", "Two systems, each cited to its own instructions.", other),
    fails("the other system's instructions", "A screw of one is cited to the other's.", {
      ...other,
      "screw/locking-35 source.document": "gatepost-ifu",
    }),
    fails("a list with the other's", "The system lists the other's instructions.", {
      ...other,
      "system/pebblefin documents": ["pebblefin-ifu", "gatepost-ifu"],
    }),
    fails("a document not listed", "Drawings of the system are registered and not listed.", {
      "document/drawings": {
        title: "Pebblefin drawings",
        kind: "drawing",
        system: "pebblefin",
        issue: "1",
        date: "2026-09-01",
      },
    }),
  ],
};
