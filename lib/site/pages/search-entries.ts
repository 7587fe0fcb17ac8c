import type { SheetView } from "../../model/sheet.ts";
import type { Link } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { cardEntries, firstKind } from "./card-entries.ts";
import { markEntries } from "./mark-entries.ts";
import { procedureLink, techniqueLink } from "./part-links.ts";
import { sheetsFrom } from "./sheets-of.ts";

/** What the search finds: a thing or card, where its page is, and its cards with their PDFs. */
export type SearchEntry = {
  readonly mark: string;
  readonly text: string;
  readonly to: string;
  readonly cards: readonly { readonly title: string; readonly prints: readonly Link[] }[];
  /** For a card: what its square code says in any of its formats (id, issue, fingerprint). */
  readonly code: string;
};

/** Everything that can be searched for: marked parts, orders of work, techniques, cards. */
export function searchEntries(input: SiteInput): readonly SearchEntry[] {
  const { procedures, recipes } = input.catalogue;
  const cardsOf = (sheets: readonly SheetView[]): SearchEntry["cards"] =>
    cardEntries(input, firstKind(sheets)).map(({ title, prints }) => ({ title, prints }));
  const entry = (mark: string, { text, to = "" }: Link, sheets: readonly SheetView[]) => ({
    mark,
    text,
    to,
    cards: cardsOf(sheets),
    code: "",
  });
  const ids = [...new Set(input.sheets.map(({ id }) => id))];
  return [
    ...markEntries(input).map(({ mark, part, sheets }) => entry(mark, part, sheets)),
    ...[...procedures.values()].map(({ id, file }) =>
      entry("", procedureLink(input, id), sheetsFrom(input, file)),
    ),
    ...[...recipes.values()].map(({ id, file }) =>
      entry("", techniqueLink(input, id), sheetsFrom(input, file)),
    ),
    ...ids.flatMap((id) => {
      const own = input.sheets.filter((sheet) => sheet.id === id);
      const code = own.flatMap(({ identity: { card, issue, fingerprint } }) => [
        card,
        issue,
        fingerprint,
      ]);
      return cardEntries(input, own).map(({ title, page, prints }) => ({
        mark: "",
        text: title,
        to: page,
        cards: [{ title: "", prints }],
        code: [...new Set(code)].join(" "),
      }));
    }),
  ];
}
