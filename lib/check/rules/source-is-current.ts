import type { Catalogue } from "../../model/catalogue.ts";
import { citedDocuments } from "../../model/cited-documents.ts";
import type { Defined } from "../../model/definition.ts";
import { definitionsOf } from "../../model/find-definition.ts";
import type { SourceDocument } from "../../model/publisher.ts";
import type { Rule } from "../../model/rule.ts";
import { sourceAt } from "../../model/source-at.ts";
import type { Trace } from "../../model/trace.ts";
import { sampleTrace } from "../sample-trace.ts";

/** The document that stands in for this one: the one it names, else a later issue of the same title and kind. */
function successor(
  { documents }: Catalogue,
  { id, title, kind, date, superseded_by }: Defined<SourceDocument>,
): Defined<SourceDocument> | undefined {
  if (superseded_by !== undefined) return documents.get(superseded_by);
  return [...documents.values()].find(
    (other) => other.id !== id && other.title === title && other.kind === kind && other.date > date,
  );
}

/** What of a card cites a document: the definitions it was made from, or the card's own list of sources. */
function citing(catalogue: Catalogue, { uses }: Trace, document: string): readonly string[] {
  return uses.flatMap(({ kind, id, path }) => {
    if (kind === "document") return id === document ? ["its list of sources"] : [];
    const definition = definitionsOf(catalogue, kind).get(id);
    const cited = citedDocuments(definition && sourceAt(definition, path));
    return cited.includes(document) ? [id] : [];
  });
}

const later = {
  title: "Pebblefin instructions for use",
  kind: "instructions-for-use",
  system: "pebblefin",
  issue: "D",
  date: "2026-09-20",
};
const onOneCard = [sampleTrace({ uses: [["instrument", "drill-27-pilot"]] })];

/** A card rests on documents that no later issue has taken the place of. */
export const sourceIsCurrent: Rule = {
  id: "source-is-current",
  severity: "sign",
  about: "sheet",
  summary: "No card, and no sign-off, rests on a document that a later issue has superseded.",
  why: "The new issue may hold another number. The card on the wall keeps the old one until somebody has compared the two.",
  fix: "Compare each part with the new issue, then name the new document in its source; sign only for a card that the new issue does not touch.",
  source: "common practice",
  *check({ catalogue, traces }) {
    for (const document of catalogue.documents.values()) {
      const next = successor(catalogue, document);
      if (next === undefined) continue;
      const { file, id, title, issue } = document;
      const place = { file, path: document.superseded_by ? ["superseded_by"] : ["issue"] };
      const old = `${title}, issue ${issue}, is superseded by issue ${next.issue} of ${next.date}`;
      for (const trace of traces?.values() ?? []) {
        const by = citing(catalogue, trace, id);
        if (by.length > 0)
          yield {
            ...place,
            message: `${old}: the card ${trace.card} rests on it (${by.join(", ")})`,
          };
      }
      for (const signOff of catalogue.signOffs.values()) {
        if (signOff.source.document === id)
          yield {
            file: signOff.file,
            path: ["source", "document"],
            severity: "stop",
            message: `${old}: the signature ${signOff.id} rests on it`,
            fix: "Let the role read the new issue and sign again.",
          };
      }
    }
  },
  examples: [
    {
      title: "the current issue",
      passes: true,
      shows: "Issue C of the instructions for use, and no later one.",
      edits: [],
      traces: onOneCard,
    },
    {
      title: "a later issue registered",
      passes: false,
      shows: "Issue D of the same instructions is registered; one card shows a drill from issue C.",
      edits: [{ file: "document/ifu-d", path: [], value: later }],
      traces: onOneCard,
    },
    {
      title: "an issue that names its successor",
      passes: false,
      shows: "The instructions say that other instructions stand in for them.",
      edits: [
        { file: "document/other", path: [], value: { ...later, title: "New instructions" } },
        { file: "document/pebblefin-ifu", path: ["superseded_by"], value: "other" },
      ],
      traces: onOneCard,
    },
    {
      title: "a superseded issue that no card rests on",
      passes: true,
      shows: "Issue D is registered, and no card shows anything from issue C.",
      edits: [{ file: "document/ifu-d", path: [], value: later }],
      traces: [],
    },
    {
      title: "an earlier issue kept on file",
      passes: true,
      shows: "Issue B of 1 August is registered beside issue C of 1 September.",
      edits: [
        { file: "document/ifu-b", path: [], value: { ...later, issue: "B", date: "2026-08-01" } },
      ],
      traces: onOneCard,
    },
  ],
};
