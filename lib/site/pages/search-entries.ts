import type { Link } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { cardEntries } from "./card-entries.ts";
import { markEntries } from "./mark-entries.ts";
import { procedureLink, techniqueLink } from "./part-links.ts";
import { sheetsFrom } from "./sheets-of.ts";

/** What the search finds: a thing or card, where its page is, and its PDFs. */
export type SearchEntry = {
  readonly mark: string;
  readonly text: string;
  readonly to: string;
  readonly prints: readonly { readonly text: string; readonly to: string }[];
};

function entry(mark: string, { text, to = "" }: Link, prints: readonly Link[]): SearchEntry {
  return {
    mark,
    text,
    to,
    prints: prints.map(({ text: name, label, to: file = "" }) => ({
      text: label ?? name,
      to: file,
    })),
  };
}

/** Everything that can be searched for: marked parts, orders of work, techniques, cards. */
export function searchEntries(input: SiteInput): readonly SearchEntry[] {
  const { procedures, recipes } = input.catalogue;
  const printsOf = (sheets: Parameters<typeof cardEntries>[1]): readonly Link[] =>
    cardEntries(input, sheets).flatMap(({ prints }) => prints);
  return [
    ...markEntries(input).map(({ mark, part, sheets }) => entry(mark, part, printsOf(sheets))),
    ...[...procedures.values()].map(({ id, file }) =>
      entry("", procedureLink(input, id), printsOf(sheetsFrom(input, file))),
    ),
    ...[...recipes.values()].map(({ id, file }) =>
      entry("", techniqueLink(input, id), printsOf(sheetsFrom(input, file))),
    ),
    ...cardEntries(input, input.sheets).map(({ title, page, prints }) =>
      entry("", { text: title, to: page }, prints),
    ),
  ];
}
