import type { SheetView } from "../../model/sheet.ts";
import type { Block, Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";
import { cardEntries, cardPath, printLink } from "./card-entries.ts";

const fragmentOf = ({ fragments }: SiteInput, { id, format }: SheetView): string =>
  fragments.get(`${id}.${format.id}`) ?? "";

/** The answering card beneath its practice sheet, folded away until it is asked for. */
function answersTo(input: SiteInput, { practice, format }: SheetView): readonly Block[] {
  const card = input.sheets.find(
    (one) => one.id === practice?.answers && one.format.id === format.id,
  );
  if (card === undefined) return [];
  return [
    { kind: "reveal", summary: "Show the answers", html: fragmentOf(input, card) },
    { kind: "links", links: [{ text: `The card: ${card.title}`, to: cardPath(card) }] },
  ];
}

/** A page for each practice sheet with its answers to reveal, and the list of them. */
export function practicePages(input: SiteInput): readonly Page[] {
  const sheets = input.sheets.filter(({ practice }) => practice !== undefined);
  const pages = sheets.map((sheet): Page => {
    const print = printLink(input, sheet);
    const links = print.length > 0 ? print : [{ text: "PDF not built in this preview" }];
    return {
      path: cardPath(sheet),
      title: `${sheet.title}, ${sheet.format.name}`,
      titled: false,
      blocks: [
        { kind: "links", links },
        { kind: "sheet", html: fragmentOf(input, sheet) },
        ...answersTo(input, sheet),
      ],
    };
  });
  const text =
    "The same sheets with their answers left blank. Write them in, then look at the card itself; nothing is scored or kept.";
  return [
    ...pages,
    {
      path: "practice/index.html",
      title: "Practice",
      titled: true,
      blocks: [
        { kind: "text", text },
        { kind: "cards", cards: cardEntries(input, sheets) },
      ],
    },
  ];
}
