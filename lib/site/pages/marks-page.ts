import type { Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { printCell } from "./card-entries.ts";
import { markEntries } from "./mark-entries.ts";

/** Every mark etched on metal in order, with what bears it and the PDFs that show it. */
export function marksPage(input: SiteInput): Page {
  return {
    path: "marks/index.html",
    title: "Marks A–Z",
    titled: true,
    blocks: [
      { kind: "search" },
      {
        kind: "text",
        text: "One mark may stand on several things: a sleeve bears the number of its screw, and some drill may bear it too. Read the noun with the number.",
      },
      {
        kind: "table",
        caption: "Marks as etched on the metal",
        head: ["mark", "what it is", "system", "cards"],
        rows: markEntries(input).map(({ mark, part, system, sheets }) => [
          [{ text: mark }],
          [part],
          [system],
          printCell(input, sheets),
        ]),
      },
    ],
  };
}
