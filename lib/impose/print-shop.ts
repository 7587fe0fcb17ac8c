import { PDFDocument, rgb } from "@cantoo/pdf-lib";
import * as fontkit from "fontkit";
import { cropMarks } from "./crop-marks.ts";

/** A card for a print shop; sizes in millimetres. */
export type PrintShopJob = {
  readonly title: string;
  readonly pages: readonly Uint8Array[];
  readonly card: readonly [width: number, height: number];
  readonly bleed: number;
  /** The clear edge inside the cut. */
  readonly margin: number;
  /** Card, issue and date, as printed at the edge. */
  readonly slug: string;
  /** A TrueType or woff font for the slug line. */
  readonly font: Uint8Array;
  /** The day the PDF bears, ISO 8601. */
  readonly day: string;
};

const point = 72 / 25.4;
/** Paper around the bleed, for marks and the slug line. */
const around = 10;
const tick = 1.5;

/** A print-only PDF of a card with the boxes that a print shop reads (trim, bleed, safe area), crop marks, marks where the
 * clear edge ends, and a slug line. It is not tagged: the card's own PDF is the one to read. Same input, same bytes. */
export async function printShop(job: PrintShopJob): Promise<Uint8Array> {
  const { title, pages, card, bleed, margin, slug, font: bytes, day } = job;
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.registerFontkit(fontkit as unknown as Parameters<typeof pdf.registerFontkit>[0]);
  const font = await pdf.embedFont(bytes, { subset: true });
  pdf.setTitle(title);
  pdf.setSubject(slug);
  pdf.setKeywords(["print only", "not tagged"]);
  pdf.setCreationDate(new Date(`${day}T00:00:00Z`));
  pdf.setModificationDate(new Date(`${day}T00:00:00Z`));
  const off = around + bleed;
  const [width, height] = card;
  const box = (inset: number): [number, number, number, number] => [
    (off + inset) * point,
    (off + inset) * point,
    (width - 2 * inset) * point,
    (height - 2 * inset) * point,
  ];
  for (const [side, one] of pages.entries()) {
    const page = pdf.addPage([(width + 2 * off) * point, (height + 2 * off) * point]);
    page.setTrimBox(...box(0));
    page.setBleedBox(...box(-bleed));
    page.setArtBox(...box(margin));
    const [form] = await pdf.embedPdf(one, [0]);
    const [x, y] = [off * point, off * point];
    if (form) page.drawPage(form, { x, y, width: width * point, height: height * point });
    cropMarks(page, { x: off, y: off }, card, bleed + 1);
    for (const inner of [off + margin, off + width - margin])
      for (const [from, to] of [
        [off - bleed - tick, off - bleed],
        [off + height + bleed, off + height + bleed + tick],
      ] as const)
        page.drawLine({
          start: { x: inner * point, y: from * point },
          end: { x: inner * point, y: to * point },
          thickness: 0.25,
          color: rgb(0, 0, 0),
        });
    const lines = [
      `${slug} · side ${side + 1} of ${pages.length}`,
      `cut ${width} × ${height} mm · bleed ${bleed} mm · clear edge ${margin} mm`,
    ];
    for (const [line, text] of lines.entries())
      page.drawText(text, { x: off * point, y: (5 - line * 2.5) * point, size: 6, font });
  }
  return pdf.save({ useObjectStreams: true, updateFieldAppearances: false });
}
