import type { PdfObjects } from "./pdf-objects.ts";
import { type PdfReader, pdfReader } from "./pdf-reader.ts";

/** A heading in the outline: how deep it stands, its page, the rest of where it leads, and its structure element. */
export type Heading = {
  readonly title: string;
  readonly depth: number;
  readonly page: number;
  readonly place: string;
  readonly element: number;
};

/** A printed document, looked into once, so that pages can be taken out of it. */
export type PdfBook = {
  readonly reader: PdfReader;
  readonly pages: readonly number[];
  readonly producer: string;
  readonly language: string;
  /** The document's structure element, its parts, and the page on which each starts. */
  readonly document: number;
  readonly parts: readonly { readonly element: number; readonly page: number }[];
  /** What the numbers under which pages and notes register with the structure stand for. */
  readonly parents: ReadonlyMap<number, number>;
  readonly headings: readonly Heading[];
};

const references = (text: string): readonly number[] =>
  [...text.matchAll(/(\d+) 0 R/g)].map(([, to]) => Number(to));
const listed = (text: string, key: string): string =>
  new RegExp(`/${key} (\\[[^\\]]*\\]|\\d+ 0 R)`).exec(text)?.[1] ?? "";

/** The page on which a structure element starts. */
function pageOf({ textOf, reference }: PdfReader, element: number): number {
  for (let left = [element]; left.length > 0; ) {
    const [next = 0, ...others] = left;
    const text = textOf(next);
    const page = reference(text, "Pg");
    if (page) return page;
    left = [...references(listed(text, "K")), ...others];
  }
  return 0;
}

function headingsBelow({ textOf, reference }: PdfReader, outline: number, depth = 0): Heading[] {
  const all: Heading[] = [];
  for (let item = reference(textOf(outline), "First"); item; ) {
    const text = textOf(item);
    const [, title = ""] = /\/Title (\((?:\\.|[^\\)])*\)|<[^>]*>)/.exec(text) ?? [];
    const [, page = "", place = ""] = /\/Dest \[(\d+) 0 R ([^\]]*)\]/.exec(text) ?? [];
    all.push({ title, depth, page: Number(page), place, element: reference(text, "SE") });
    all.push(...headingsBelow({ textOf, reference } as PdfReader, item, depth + 1));
    item = reference(text, "Next");
  }
  return all;
}

/** Looks into a document. */
export function pdfBook(pdf: PdfObjects): PdfBook {
  const reader = pdfReader(pdf);
  const { textOf, reference } = reader;
  const root = textOf(pdf.root);
  const tree = textOf(reference(root, "StructTreeRoot"));
  const document = reference(tree, "K");
  const nums = listed(textOf(reference(tree, "ParentTree")), "Nums");
  return {
    reader,
    pages: reader.pages,
    producer: /\/Producer \(([^)]*)\)/.exec(textOf(pdf.info))?.[1] ?? "",
    language: /\/Lang \(([^)]*)\)/.exec(root)?.[1] ?? "",
    document,
    parts: references(listed(textOf(document), "K")).map((element) => ({
      element,
      page: pageOf(reader, element),
    })),
    parents: new Map(
      [...nums.matchAll(/(\d+) (\d+) 0 R/g)].map(([, key, to]) => [Number(key), Number(to)]),
    ),
    headings: headingsBelow(reader, reference(root, "Outlines")),
  };
}
