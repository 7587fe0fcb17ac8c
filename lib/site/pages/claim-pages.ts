import { known } from "../../model/catalogue.ts";
import { citationOf } from "../../model/citation-of.ts";
import { definitionsOf } from "../../model/find-definition.ts";
import type { Citation } from "../../model/source.ts";
import type { Claim, Fact } from "../../model/trace.ts";
import type { Link, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { cardPath } from "./card-entries.ts";
import { definitionLink, lineLink } from "./definition-link.ts";

/** The citation of a fact; a document is its own source. */
function cited({ catalogue }: SiteInput, { kind, id, path }: Fact): Citation | undefined {
  if (kind === "document") return { document: id, section: "title page", status: "stated" };
  const definition = definitionsOf(catalogue, kind).get(id);
  return definition && citationOf(definition, path);
}

function factCells(input: SiteInput, fact: Fact): readonly Link[] {
  const citation = cited(input, fact);
  const line = lineLink(input, fact);
  if (citation === undefined)
    return [definitionLink(fact), { text: "no source" }, { text: "" }, { text: "" }, line];
  const { title, issue, date } = known(input.catalogue.documents, citation.document);
  return [
    definitionLink(fact),
    { text: `${title}, ${citation.section}`, to: `documents/${citation.document}.html` },
    { text: `issue ${issue}, ${date}` },
    { text: citation.status },
    line,
  ];
}

function claimRows(input: SiteInput, { what, words, facts, how }: Claim): readonly Link[][] {
  return facts.map((fact) => [
    { text: words.join(" · ") },
    { text: [what, how].filter(Boolean).join(". ") },
    ...factCells(input, fact),
  ]);
}

/** The page of claims of one card, from the site's root. */
export const claimsPath = (sheet: string): string => `cards/${sheet}/sources.html`;

/** A page for each card: every number it prints, the facts it comes from, and the document, section, issue and line of each. */
export function claimPages(input: SiteInput): Page[] {
  return [...input.traces.values()].map(({ sheet, card, claims }): Page => {
    const papers = input.sheets.filter(({ id }) => id === sheet);
    return {
      path: claimsPath(sheet),
      title: `Sources: ${papers[0]?.title ?? sheet}`,
      titled: true,
      blocks: [
        {
          kind: "text",
          text: `Every number printed on ${card}, and where it comes from. Numbers that count on the paper itself stand for nothing else: steps, holes, boxes to tick, the page and the scale of a drawing.`,
        },
        {
          kind: "links",
          links: papers.map((one) => ({
            text: `The card, ${one.format.name}`,
            to: cardPath(one),
          })),
        },
        {
          kind: "table",
          caption: `Numbers on ${card} and their sources`,
          head: [
            "on the card",
            "what it says",
            "from",
            "document and section",
            "issue",
            "status",
            "defined in",
          ],
          rows: claims
            .flatMap((claim) => claimRows(input, claim))
            .map((row) => row.map((cell) => [cell])),
        },
      ],
    };
  });
}
