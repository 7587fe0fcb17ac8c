import type { Link, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { printCell } from "./card-entries.ts";
import { packLinks } from "./card-pages.ts";
import { type MarkedKind, markEntries } from "./mark-entries.ts";
import { procedureLink, systemLink, techniqueLink } from "./part-links.ts";
import { sheetsFrom } from "./sheets-of.ts";

type Row = readonly (readonly Link[])[];

const indexPage = (
  folder: string,
  title: string,
  head: readonly string[],
  rows: readonly Row[],
): Page => ({
  path: `${folder}/index.html`,
  title,
  titled: true,
  blocks: [{ kind: "table", caption: `${title}, with the cards that show each`, head, rows }],
});

/** An index for each kind of part: every one of them with its mark, its system and its PDFs. */
export function indexPages(input: SiteInput): readonly Page[] {
  const { systems, procedures, recipes } = input.catalogue;
  const marked = (kind: MarkedKind, title: string): Page =>
    indexPage(
      kind,
      title,
      ["name", "mark", "system", "cards"],
      markEntries(input, [kind]).map(({ mark, part, system, sheets }) => [
        [part],
        [{ text: mark }],
        [system],
        printCell(input, sheets),
      ]),
    );
  return [
    marked("instruments", "Instruments"),
    marked("screws", "Screws"),
    marked("plates", "Plates"),
    marked("trays", "Trays"),
    indexPage(
      "systems",
      "Systems",
      ["name", "sizes", "how the generation shows", "all cards in one PDF"],
      [...systems.values()].map(({ id, sizes, generation_mark }) => [
        [systemLink(input, id)],
        [{ text: sizes }],
        [{ text: generation_mark }],
        packLinks(input, id),
      ]),
    ),
    indexPage(
      "procedures",
      "Orders of work",
      ["name", "system", "cards"],
      [...procedures.values()].map(({ id, system, file }) => [
        [procedureLink(input, id)],
        [systemLink(input, system)],
        printCell(input, sheetsFrom(input, file)),
      ]),
    ),
    indexPage(
      "techniques",
      "Techniques",
      ["name", "cards"],
      [...recipes.values()].map(({ id, file }) => [
        [techniqueLink(input, id)],
        printCell(input, sheetsFrom(input, file)),
      ]),
    ),
  ];
}
