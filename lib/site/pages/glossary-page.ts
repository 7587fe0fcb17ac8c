import type { Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

/** The words of the trade as this site uses them. */
export function glossaryPage({ catalogue }: SiteInput): Page {
  return {
    path: "glossary/index.html",
    title: "Glossary",
    titled: true,
    blocks: [
      {
        kind: "table",
        caption: "Words of the trade",
        head: ["word", "what it means here"],
        rows: [...catalogue.terms.values()].map(({ term, means }) => [
          [{ text: term }],
          [{ text: means }],
        ]),
      },
    ],
  };
}
