import { paintedLetters } from "./painted-letters.ts";
import type { PdfObjects } from "./pdf-objects.ts";
import { pdfReader } from "./pdf-reader.ts";
import type { Box } from "./plane.ts";
import type { PrintJob } from "./print-job.ts";
import { unreadTexts } from "./unread-texts.ts";

/** What is read in a PDF: its pages, the first page's size in points, and which of the expected texts are not met, or not met whole. */
export type ReadPdf = {
  readonly pages: number;
  readonly size: readonly [width: number, height: number];
  readonly missing: readonly string[];
};

/** Reads a PDF back: the texts of each page must stand on it, and be seen. */
export function readObjects(
  objects: PdfObjects,
  { texts, textsByPage = [texts] }: Pick<PrintJob, "texts" | "textsByPage">,
): ReadPdf {
  const reader = pdfReader(objects);
  const boxOf = (page = 0): Box => {
    const [left = 0, bottom = 0, right = 0, top = 0] = (
      /\/MediaBox \[([^\]]*)\]/.exec(reader.textOf(page))?.[1] ?? ""
    )
      .split(" ")
      .map(Number);
    return [left, bottom, right, top];
  };
  const [left, bottom, right, top] = boxOf(reader.pages[0]);
  return {
    pages: reader.pages.length,
    size: [right - left, top - bottom],
    missing: textsByPage.flatMap((own, index) => {
      const page = reader.pages[index];
      const letters = page ? paintedLetters(reader, page, boxOf(page)) : [];
      const missing = unreadTexts(letters, own);
      return index === 0 ? missing : missing.map((text) => `page ${index + 1}: ${text}`);
    }),
  };
}
