import type { SheetView } from "../../model/sheet.ts";
import type { Block, CardEntry, Link } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

const keyOf = (sheet: SheetView): string => `${sheet.id}.${sheet.format.id}`;

/** Where a card stands on the site. */
export const cardPath = (sheet: SheetView): string => `cards/${sheet.id}/${sheet.format.id}.html`;

/** A card's title as one card among many: a step card's is its screw, which several share, so its technique is added. */
export function cardTitle(sheet: SheetView): string {
  return sheet.kind === "steps" ? `${sheet.title}: ${sheet.subject}` : sheet.title;
}

/** The link to a sheet's PDF; nothing where no PDF was built. */
export function printLink({ prints }: SiteInput, sheet: SheetView): Link[] {
  const print = prints.get(keyOf(sheet));
  if (!print) return [];
  return [
    {
      text: `PDF ${sheet.format.name.split(" ")[0]}`,
      to: `pdf/${keyOf(sheet)}.pdf`,
      note: `${Math.ceil(print.pdfBytes / 1024)} KB`,
      label: `PDF ${sheet.format.name}: ${cardTitle(sheet)}`,
    },
  ];
}

/** The cards that some sheets make: one for all its formats, shown in the first of them. */
export function cardEntries(input: SiteInput, sheets: readonly SheetView[]): CardEntry[] {
  return [...new Set(sheets.map(({ id }) => id))].flatMap((id) => {
    const formats = sheets.filter((sheet) => sheet.id === id);
    const [first] = formats;
    if (!first) return [];
    return [
      {
        title: cardTitle(first),
        issue: first.identity.issue,
        page: cardPath(first),
        thumbnail: input.prints.get(keyOf(first))?.thumb ? `thumbs/${keyOf(first)}.png` : "",
        width: Math.round(first.format.width),
        height: Math.round(first.format.height),
        prints: formats.flatMap((sheet) => printLink(input, sheet)),
      },
    ];
  });
}

/** A heading with the cards of some sheets under it; nothing where there are none. */
export function cardsBlocks(
  input: SiteInput,
  heading: { readonly id: string; readonly text: string },
  sheets: readonly SheetView[],
): readonly Block[] {
  if (sheets.length === 0) return [];
  return [
    { kind: "heading", ...heading },
    { kind: "cards", cards: cardEntries(input, sheets) },
  ];
}

/** The sheets that are of the first one's kind: what shows a thing best. */
export function firstKind(sheets: readonly SheetView[]): readonly SheetView[] {
  return sheets.filter(({ kind }) => kind === sheets[0]?.kind);
}

/** A table's cell for some sheets: the cards of the first one's kind, each by its name with its PDFs. */
export function printCell(input: SiteInput, sheets: readonly SheetView[]): readonly Link[] {
  return cardEntries(input, firstKind(sheets)).flatMap(({ title, page, prints }) => [
    { text: title, to: page },
    ...prints.map(({ note: _size, ...print }) => print),
  ]);
}
