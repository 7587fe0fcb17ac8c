import type { SheetView } from "../../model/sheet.ts";
import type { Block, CardEntry, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

const keyOf = (sheet: SheetView): string => `${sheet.id}.${sheet.format.id}`;
export const cardPath = (sheet: SheetView): string => `cards/${sheet.id}/${sheet.format.id}.html`;

/** A card as the indexes show it. */
function cardEntry({ prints }: SiteInput, sheet: SheetView): CardEntry {
  const print = prints.get(keyOf(sheet));
  return {
    title: sheet.title,
    format: sheet.format.name,
    issue: sheet.identity.issue,
    size: print ? `${Math.ceil(print.pdfBytes / 1024)} KB` : "PDF not built in this preview",
    page: cardPath(sheet),
    pdf: print ? `pdf/${keyOf(sheet)}.pdf` : "",
    thumbnail: print?.thumb ? `thumbs/${keyOf(sheet)}.png` : "",
  };
}

/** The block of all cards that some sheets make, first format of each first. */
export function cardsBlock(input: SiteInput, wanted: (sheet: SheetView) => boolean): Block[] {
  const cards = input.sheets.filter(wanted).map((sheet) => cardEntry(input, sheet));
  return cards.length > 0 ? [{ kind: "cards", cards }] : [];
}

const kinds = [
  ["pairing", "Pairing sheets"],
  ["lengths", "Length sheets"],
  ["plate-map", "Plate maps"],
  ["steps", "Step cards"],
  ["tray", "Tray cards"],
  ["case", "Case sheets"],
] as const;

/** A page for each card and format, and the index of all cards with the packs. */
export function cardPages(input: SiteInput): Page[] {
  const pages = input.sheets.map((sheet): Page => {
    const { pdf } = cardEntry(input, sheet);
    const print =
      pdf === ""
        ? [{ text: "PDF not built in this preview" }]
        : [{ text: `Print: ${sheet.title}, ${sheet.format.name} (PDF)`, to: pdf }];
    const others = input.sheets
      .filter((other) => other.id === sheet.id && other !== sheet)
      .map((other) => ({ text: `Same card, ${other.format.name}`, to: cardPath(other) }));
    return {
      path: cardPath(sheet),
      title: `${sheet.title}, ${sheet.format.name}`,
      blocks: [
        { kind: "links", links: [...print, ...others] },
        { kind: "sheet", html: input.fragments.get(keyOf(sheet)) ?? "" },
      ],
    };
  });
  const packs = input.packs.map(({ file, title, bytes }) => ({
    text: title,
    to: file,
    note: `${Math.ceil(bytes / 1024)} KB`,
  }));
  const blocks: Block[] = [
    ...(packs.length > 0
      ? [
          {
            kind: "heading",
            text: "Packs: all cards of a system in one PDF",
            id: "packs",
          } as const,
          { kind: "links", links: packs } as const,
        ]
      : []),
    ...kinds.flatMap(([kind, title]): Block[] => [
      { kind: "heading", text: title, id: kind },
      ...cardsBlock(input, (sheet) => sheet.kind === kind),
    ]),
  ];
  return [...pages, { path: "cards/index.html", title: "All cards", blocks }];
}
