import { citedDocuments } from "../../model/cited-documents.ts";
import type { DefinitionKind } from "../../model/definition.ts";
import { definitions } from "../../model/definition.ts";
import { definitionsOf } from "../../model/find-definition.ts";
import type { Source } from "../../model/source.ts";
import type { Fact, Trace } from "../../model/trace.ts";
import type { Block, Link, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { cardPath } from "./card-entries.ts";
import { claimsPath } from "./claim-pages.ts";
import { definitionLink, lineLink } from "./definition-link.ts";

/** A `source` of the library and the object it stands in. */
type Place = { readonly fact: Fact; readonly source: Source };

function* sourcesBelow(fact: Fact, value: unknown): Generator<Place> {
  if (typeof value !== "object" || value === null) return;
  for (const [key, inner] of Object.entries(value)) {
    const below = { ...fact, path: [...fact.path, key] };
    if (key === "source") yield { fact: below, source: inner as Source };
    else yield* sourcesBelow(below, inner);
  }
}

function allSources({ catalogue }: SiteInput): readonly Place[] {
  return (Object.keys(definitions) as DefinitionKind[]).flatMap((kind) =>
    [...definitionsOf(catalogue, kind).values()].flatMap((one) => [
      ...sourcesBelow({ kind, id: one.id, file: one.file, path: [] }, one),
    ]),
  );
}

/** The sections a source cites in one document: of the whole file, and of single fields. */
function sectionsIn({ document, section, fields = {} }: Source, id: string): readonly string[] {
  return [
    ...(document === id ? [section] : []),
    ...Object.entries(fields)
      .filter(([, field]) => field.document === id)
      .map(([name, field]) => `${name}: ${field.section}`),
  ];
}

const restsOn = ({ uses, claims }: Trace, files: ReadonlySet<string>, id: string): boolean =>
  uses.some((fact) => (fact.kind === "document" ? fact.id === id : files.has(fact.file))) ||
  claims.some(({ facts }) => facts.some(({ file }) => files.has(file)));

/** One link to a cell. */
const cells = (rows: readonly (readonly Link[])[]): readonly (readonly (readonly Link[])[])[] =>
  rows.map((row) => row.map((one) => [one]));

function cardRows(input: SiteInput, traces: readonly Trace[]): readonly Link[][] {
  return traces.flatMap(({ sheet, card }) => {
    const paper = input.sheets.find(({ id }) => id === sheet);
    if (paper === undefined) return [];
    return [
      [
        { text: card },
        { text: paper.title, to: cardPath(paper) },
        { text: "its sources", to: claimsPath(sheet) },
      ],
    ];
  });
}

const orNothing = (block: Extract<Block, { kind: "table" }>, nothing: string): Block =>
  block.rows.length > 0 ? block : { kind: "text", text: nothing };

/** A page for each source document with all that depends on it, and the list of documents. */
export function documentPages(input: SiteInput): Page[] {
  const sources = allSources(input);
  const documents = [...input.catalogue.documents.values()].map((document) => {
    const places = sources.filter(({ source }) => citedDocuments(source).includes(document.id));
    const files = new Set(places.map(({ fact }) => fact.file));
    const cards = [...input.traces.values()].filter((trace) => restsOn(trace, files, document.id));
    return { document, places, cards };
  });
  const pages = documents.map(({ document, places, cards }): Page => {
    const { id, title, kind, issue, date, superseded_by } = document;
    const next = input.catalogue.documents.get(superseded_by ?? "");
    return {
      path: `documents/${id}.html`,
      title: `${title}, issue ${issue}`,
      titled: true,
      blocks: [
        { kind: "text", text: `${kind.replaceAll("-", " ")}, issue ${issue}, dated ${date}.` },
        ...(next
          ? [
              {
                kind: "links",
                links: [
                  {
                    text: `Superseded by ${next.title}, issue ${next.issue}`,
                    to: `documents/${next.id}.html`,
                  },
                ],
              } as const,
            ]
          : []),
        { kind: "heading", text: "Definitions that cite it", id: "definitions" },
        orNothing(
          {
            kind: "table",
            caption: "What the library takes from this document",
            head: ["definition", "section", "defined in"],
            rows: cells(
              places.map(({ fact, source }) => [
                definitionLink({ ...fact, path: fact.path.slice(0, -1) }),
                { text: sectionsIn(source, id).join("; ") },
                lineLink(input, { ...fact, path: fact.path.slice(0, -1) }),
              ]),
            ),
          },
          "No definition cites it.",
        ),
        { kind: "heading", text: "Cards that depend on it", id: "cards" },
        orNothing(
          {
            kind: "table",
            caption: "Cards to look at again when this document changes",
            head: ["card", "title", "numbers"],
            rows: cells(cardRows(input, cards)),
          },
          "No card depends on it.",
        ),
      ],
    };
  });
  return [
    ...pages,
    {
      path: "documents/index.html",
      title: "Source documents",
      titled: true,
      blocks: [
        {
          kind: "table",
          caption: "Documents that the numbers of this library come from",
          head: ["document", "issue", "date", "kind", "definitions", "cards"],
          rows: cells(
            documents.map(({ document, places, cards }) => [
              { text: document.title, to: `documents/${document.id}.html` },
              { text: document.issue },
              { text: document.date },
              { text: document.kind.replaceAll("-", " ") },
              { text: String(places.length) },
              { text: String(cards.length) },
            ]),
          ),
        },
      ],
    },
  ];
}
