import { paintedLetters } from "./painted-letters.ts";
import type { PdfObjects } from "./pdf-objects.ts";
import { pdfReader } from "./pdf-reader.ts";
import { unreadTexts } from "./unread-texts.ts";

/** What is read in a PDF: its pages, the first page's size in points, and which of the expected texts are not met, or not met whole. */
export type ReadPdf = {
  readonly pages: number;
  readonly size: readonly [width: number, height: number];
  readonly missing: readonly string[];
};

/** Reads a PDF back. A sheet's texts must stand on its first page, and be seen; a pack's must be painted on any page. */
export function readObjects(
  objects: PdfObjects,
  { pages, texts }: { readonly pages: number; readonly texts: readonly string[] },
): ReadPdf {
  const reader = pdfReader(objects);
  const boxOf = (page: number): readonly number[] =>
    (/\/MediaBox \[([^\]]*)\]/.exec(reader.textOf(page))?.[1] ?? "").split(" ").map(Number);
  const lettersOf = (page: number) => {
    const [left = 0, bottom = 0, right = 0, top = 0] = boxOf(page);
    return paintedLetters(reader, page, [left, bottom, right, top]);
  };
  const [left = 0, bottom = 0, right = 0, top = 0] = boxOf(reader.pages[0] ?? 0);
  const read = pages === 1 ? reader.pages.slice(0, 1) : reader.pages;
  return {
    pages: reader.pages.length,
    size: [right - left, top - bottom],
    missing: unreadTexts(read.flatMap(lettersOf), texts),
  };
}
