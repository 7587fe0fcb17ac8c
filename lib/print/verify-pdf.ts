import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { SheetView, WarningBox } from "../model/sheet.ts";

/** What was read back from a PDF. */
export type PdfFacts = {
  readonly pages: number;
  readonly size: readonly [width: number, height: number];
  readonly missing: readonly string[];
};

const bare = (text: string): string => text.normalize("NFKC").replace(/\s+/g, "");

function warned({ lines }: WarningBox): readonly string[] {
  return lines.map(({ subject, words }) => `${subject}${words}`);
}

function rowsOf(sheet: SheetView): readonly string[] {
  switch (sheet.kind) {
    case "pairing":
      return sheet.rows
        .flatMap(({ called, cells }) => [called, ...cells.map(({ number }) => number)])
        .concat(warned(sheet.traps), warned(sheet.lookAlikes));
    case "lengths":
      return sheet.columns.flatMap(({ called, entries }) => [
        called,
        ...entries.map(({ reads }) => reads),
      ]);
    case "plate-map":
      return [
        sheet.sideWords,
        ...sheet.bands.flatMap(({ pairings }) =>
          pairings.flatMap(({ called, hand }) => [called, hand]),
        ),
        ...warned(sheet.traps),
      ];
    case "steps":
      return sheet.steps.flatMap(({ verb, say, inHand, handedWith, cautions }) => [
        verb,
        say,
        inHand,
        handedWith,
        ...cautions.map(({ text }) => text),
      ]);
    case "tray":
      return [...sheet.contents.map(({ what }) => what), ...warned(sheet.lookAlikes)];
    case "case":
      return [
        ...sheet.rows.flatMap(({ called, hand }) => [called, hand]),
        ...warned(sheet.missing),
      ];
  }
}

/** Every text that must be met in a sheet's PDF: frame, cautions, rows. */
export function expectedTexts(sheet: SheetView): readonly string[] {
  const frame = [
    sheet.title,
    sheet.banner,
    sheet.defer,
    sheet.ask,
    sheet.identity.card,
    sheet.identity.fingerprint,
  ];
  return [...frame, ...sheet.cautions.map(({ text }) => text), ...rowsOf(sheet)].filter(
    (text) => text.trim() !== "",
  );
}

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
