import { CopiedObjects } from "./copied-objects.ts";
import { writeOutline } from "./outline.ts";
import { packed } from "./packed.ts";
import type { PdfBook } from "./pdf-book.ts";
import type { PdfObjects } from "./pdf-objects.ts";
import { pdfText } from "./pdf-text.ts";

/** What a file says of itself. */
export type About = {
  readonly title: string;
  readonly subject?: string;
  readonly keywords?: readonly string[];
  readonly issue?: string;
  /** ISO 639 code; the document's own by default. */
  readonly language?: string;
  /** The day that it bears, ISO 8601. */
  readonly day: string;
};

function infoText({ title, subject, keywords, issue, day }: About, producer: string): string {
  const stamp = `(D:${day.replaceAll("-", "")}000000+00'00')`;
  const told = [
    `/Title ${pdfText(title)}`,
    subject ? `/Subject ${pdfText(subject)}` : "",
    keywords?.length ? `/Keywords ${pdfText(keywords.join(", "))}` : "",
    issue ? `/Issue ${pdfText(issue)}` : "",
    `/Creator (Trayleaf)/Producer (${producer})/CreationDate ${stamp}/ModDate ${stamp}`,
  ];
  return `<<${told.join("")}>>`;
}

function putPage(copied: CopiedObjects, { reader }: PdfBook, old: number, pageList: number): void {
  const text = reader.textOf(old);
  const { drawn, resources } = copied.drawing(text, reader.reference(text, "Contents"), true);
  const content = copied.added(packed(drawn));
  const box = /\/MediaBox \[[^\]]*\]/.exec(text)?.[0] ?? "";
  const notes = copied.settled(/\/Annots \[[^\]]*\]/.exec(text)?.[0] ?? "");
  const tags = /\/StructParents (\d+)/.exec(text)?.[1];
  const tagged = tags === undefined ? "" : `/StructParents ${copied.registered(tags)}/Tabs/S`;
  copied.put(copied.take(old), {
    text: `<</Type/Page/Parent ${pageList} 0 R${box}${resources}/Contents ${content} 0 R${notes}${tagged}>>`,
  });
}

/** The structure element of the whole document, with those of its parts that start on the pages. */
function putDocument(
  copied: CopiedObjects,
  book: PdfBook,
  { tree, pages, language }: { tree: number; pages: ReadonlySet<number>; language: string },
): void {
  const document = copied.numbered(book.document);
  const parts = book.parts
    .filter(({ page }) => pages.has(page))
    .map(({ element }) => `${copied.take(element)} 0 R`);
  copied.put(document, {
    text: `<</Type/StructElem/S/Document/Lang (${language})/P ${tree} 0 R/K [${parts.join(" ")}]>>`,
  });
}

function putTree(
  { parents, elements, added, put }: CopiedObjects,
  tree: number,
  document: number,
): void {
  const nums = parents.map((to, key) => `${key} ${to} 0 R`).join(" ");
  const list = elements.sort(([a], [b]) => (a < b ? -1 : 1)).map(([id, to]) => `${id} ${to} 0 R`);
  const parentTree = added({ text: `<</Nums [${nums}]>>` });
  const idTree = added({ text: `<</Names [${list.join(" ")}]>>` });
  put(tree, {
    text: `<</Type/StructTreeRoot/K ${document} 0 R/ParentTree ${parentTree} 0 R/ParentTreeNextKey ${parents.length}/IDTree ${idTree} 0 R>>`,
  });
}

/** Takes the pages `from` up to but not including `to` out of a document as one of their own, with their tags, outline and
 * fonts. What comes out depends on these pages and on `about` alone: not on their neighbours, on the clock or on counters.
 * Stops with 5 where a page refers to another that is not among them. */
export function takePages(book: PdfBook, from: number, to: number, about: About): PdfObjects {
  const copied = new CopiedObjects(book);
  const { add, put, take } = copied;
  const language = about.language ?? book.language;
  const pages = book.pages.slice(from, to);
  const own = new Set(pages);

  const [root, info, pageList] = [add(), add(), add()];
  for (const old of pages) copied.numbered(old);
  for (const old of pages) putPage(copied, book, old, pageList);
  const kids = pages.map((old) => `${take(old)} 0 R`).join(" ");
  put(pageList, { text: `<</Type/Pages/Count ${pages.length}/Kids [${kids}]>>` });

  const tree = book.document ? add() : 0;
  if (tree) putDocument(copied, book, { tree, pages: own, language });
  const headings = book.headings.filter(({ page }) => own.has(page));
  const outline = headings.length > 0 ? add() : 0;
  if (outline) writeOutline(headings, outline, { add, put, take });

  copied.copyTaken();
  if (tree) putTree(copied, tree, take(book.document));
  put(info, { text: infoText(about, book.producer) });
  const tagged = tree ? `/MarkInfo <</Marked true>>/StructTreeRoot ${tree} 0 R` : "";
  const outlined = outline ? `/Outlines ${outline} 0 R` : "";
  put(root, {
    text: `<</Type/Catalog/Pages ${pageList} 0 R${tagged}${outlined}/ViewerPreferences <</DisplayDocTitle true>>/Lang (${language})>>`,
  });
  return { objects: copied.objects, root, info, size: copied.last + 1 };
}
