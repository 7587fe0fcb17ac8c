import type { SheetView } from "../../model/sheet.ts";
import type { Block, Link, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { cardEntries, cardPath, cardTitle, printLink } from "./card-entries.ts";
import { claimsPath } from "./claim-pages.ts";
import { homeOf } from "./home-of.ts";
import { onThisPage } from "./on-this-page.ts";

const kinds = [
  ["pairing", "Pairing sheets"],
  ["lengths", "Length sheets"],
  ["plate-map", "Plate maps"],
  ["steps", "Step cards"],
  ["tray", "Tray cards"],
  ["case", "Case sheets"],
  ["poster", "Wall posters"],
  ["pocket", "Pocket cards"],
  ["labels", "Label stickers"],
  ["mishaps", "When it does not go to plan"],
] as const;

/** The packs, each with its size. */
export function packLinks({ packs }: SiteInput, system?: string): readonly Link[] {
  return packs
    .filter((pack) => system === undefined || pack.system === system)
    .map(({ file, title, bytes }) => ({
      text: title,
      to: file,
      note: `${Math.ceil(bytes / 1024)} KB`,
    }));
}

/** All that the boxes of a card warn of, where the paper has no room for all of it. */
function boxBlocks(sheet: SheetView): readonly Block[] {
  const boxes = [
    ...("traps" in sheet ? [["traps", sheet.traps] as const] : []),
    ...("lookAlikes" in sheet ? [["look-alikes", sheet.lookAlikes] as const] : []),
  ];
  return boxes.flatMap(([id, { title, lines, rest = [] }]): readonly Block[] =>
    rest.length === 0
      ? []
      : [
          { kind: "heading", text: title, id },
          {
            kind: "warnings",
            lines: [...lines, ...rest],
          },
        ],
  );
}

function cardPage(input: SiteInput, sheet: SheetView): Page {
  const print = printLink(input, sheet);
  const others = input.sheets
    .filter((other) => other.id === sheet.id && other !== sheet)
    .map((other) => ({ text: `Same card, ${other.format.name}`, to: cardPath(other) }));
  const first = print.length > 0 ? print : [{ text: "PDF not built in this preview" }];
  const sources = { text: "Where each number comes from", to: claimsPath(sheet.id) };
  return {
    path: cardPath(sheet),
    title: `${cardTitle(sheet)}, ${sheet.format.name}`,
    titled: false,
    blocks: [
      { kind: "row", links: [...first, sources, ...others, ...homeOf(input, sheet)] },
      { kind: "sheet", html: input.fragments.get(`${sheet.id}.${sheet.format.id}`) ?? "" },
      ...boxBlocks(sheet),
    ],
  };
}

/** A page for each card and format, and the index of all cards with the packs. */
export function cardPages(input: SiteInput): readonly Page[] {
  const packs = packLinks(input);
  const blocks: readonly Block[] = [
    ...(packs.length > 0
      ? [
          { kind: "heading", text: "All cards of a system in one PDF", id: "packs" } as const,
          { kind: "links", links: packs } as const,
        ]
      : []),
    ...kinds.flatMap(([kind, text]): readonly Block[] => [
      { kind: "heading", text, id: kind },
      {
        kind: "cards",
        cards: cardEntries(
          input,
          input.sheets.filter((sheet) => sheet.kind === kind),
        ),
      },
    ]),
  ];
  return [
    ...input.sheets.map((sheet) => cardPage(input, sheet)),
    {
      path: "cards/index.html",
      title: "All cards",
      titled: true,
      blocks: [onThisPage("cards/index.html", blocks), ...blocks],
    },
  ];
}
