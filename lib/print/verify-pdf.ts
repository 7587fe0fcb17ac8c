import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** What was read back from a PDF. */
export type PdfFacts = {
  readonly pages: number;
  readonly size: readonly [width: number, height: number];
  readonly missing: readonly string[];
};

const bare = (text: string): string => text.normalize("NFKC").replace(/\s+/g, "");

/** Reads a PDF back: its pages, the first page's size in points, and which expected texts are not in it. */
export async function verifyPdf(pdf: Uint8Array, expected: readonly string[]): Promise<PdfFacts> {
  const task = getDocument({
    data: Uint8Array.from(pdf),
    isEvalSupported: false,
    useSystemFonts: false,
    verbosity: 0,
  });
  const document = await task.promise;
  const page = await document.getPage(1);
  const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
  const texts: string[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const content = await (await document.getPage(number)).getTextContent();
    texts.push(...content.items.map((item) => ("str" in item ? item.str : "")));
  }
  const text = bare(texts.join(""));
  const missing = expected.filter((wanted) => !text.includes(bare(wanted)));
  const pages = document.numPages;
  await task.destroy();
  return { pages, size: [right - left, top - bottom], missing };
}
