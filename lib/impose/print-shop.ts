import { PDFDocument, type PDFPage, rgb } from "@cantoo/pdf-lib";
import * as fontkit from "fontkit";
import { cropMarks } from "./crop-marks.ts";

/** One face of a card; sizes in millimetres. */
export type ShopFace = {
  readonly pdf: Uint8Array;
  /** Its size after cutting. */
  readonly card: readonly [width: number, height: number];
  readonly bleed: number;
  /** The clear edge inside the cut. */
  readonly margin: number;
  /** How far laminating film stands out beyond the cut. */
  readonly film?: number;
  /** Card, issue, date and side, as printed at the edge. */
  readonly slug: string;
};

/** What a print shop gets as one file. */
export type PrintShopJob = {
  readonly title: string;
  readonly subject: string;
  readonly faces: readonly ShopFace[];
  /** A TrueType or woff font for the slug line. */
  readonly font: Uint8Array;
  /** The day the PDF bears, ISO 8601. */
  readonly day: string;
};

const point = 72 / 25.4;
/** Paper around the bleed, for marks and the slug line. */
const around = 10;
const tick = 1.5;
const hair = { thickness: 0.25, color: rgb(0, 0, 0) };

/** Short marks above and below a card where its clear edge ends. */
function edgeMarks(page: PDFPage, off: number, { card, bleed, margin }: ShopFace): void {
  const [width, height] = card;
  for (const x of [off + margin, off + width - margin])
    for (const [from, to] of [
      [off - bleed - tick, off - bleed],
      [off + height + bleed, off + height + bleed + tick],
    ] as const)
      page.drawLine({
        start: { x: x * point, y: from * point },
        end: { x: x * point, y: to * point },
        ...hair,
      });
}

/** A dashed line where the film of a laminated card ends, on the paper that is cut away. */
function filmGuide(page: PDFPage, off: number, card: ShopFace["card"], film: number): void {
  const [width, height] = card.map((side) => (side + 2 * film) * point);
  const at = (off - film) * point;
  page.drawRectangle({
    x: at,
    y: at,
    width: width ?? 0,
    height: height ?? 0,
    borderWidth: hair.thickness,
    borderColor: hair.color,
    borderDashArray: [4, 3],
  });
}

/** What is written below a card: what it is, and how it is cut and laminated. */
function footOf({ card: [width, height], bleed, margin, film, slug }: ShopFace): readonly string[] {
  const cut = `cut ${width} × ${height} mm · bleed ${bleed} mm · clear edge ${margin} mm`;
  if (film === undefined) return [slug, cut];
  const side = (length: number): string => String(Math.round((length + 2 * film) * 10) / 10);
  const sealed = `cut first, then laminate in film of ${side(width)} × ${side(height)} mm (dashed): ${film} mm seal film to film all round`;
  return [slug, `${cut} · ${sealed}`];
}

/** A print-only PDF of cards with the boxes that a print shop reads (trim, bleed, safe area), crop marks, marks where the
 * clear edge ends, a guide for laminating film and a slug line. It is not tagged: each card's own PDF is the one to read.
 * Same input, same bytes. */
export async function printShop({
  title,
  subject,
  faces,
  font: bytes,
  day,
}: PrintShopJob): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.registerFontkit(fontkit as unknown as Parameters<typeof pdf.registerFontkit>[0]);
  const font = await pdf.embedFont(bytes, { subset: true });
  pdf.setTitle(title);
  pdf.setSubject(subject);
  pdf.setKeywords(["print only", "not tagged"]);
  pdf.setCreationDate(new Date(`${day}T00:00:00Z`));
  pdf.setModificationDate(new Date(`${day}T00:00:00Z`));
  for (const face of faces) {
    const { card, bleed, margin, film } = face;
    const [width, height] = card;
    const off = around + bleed;
    const box = (inset: number): [number, number, number, number] => [
      (off + inset) * point,
      (off + inset) * point,
      (width - 2 * inset) * point,
      (height - 2 * inset) * point,
    ];
    const page = pdf.addPage([(width + 2 * off) * point, (height + 2 * off) * point]);
    page.setTrimBox(...box(0));
    page.setBleedBox(...box(-bleed));
    page.setArtBox(...box(margin));
    const [form] = await pdf.embedPdf(face.pdf, [0]);
    const [x, y] = [off * point, off * point];
    if (form) page.drawPage(form, { x, y, width: width * point, height: height * point });
    cropMarks(page, { x: off, y: off }, card, bleed + 1);
    edgeMarks(page, off, face);
    if (film !== undefined) filmGuide(page, off, card, film);
    for (const [line, text] of footOf(face).entries())
      page.drawText(text, { x: off * point, y: (5 - line * 2.5) * point, size: 6, font });
  }
  return pdf.save({ useObjectStreams: true, updateFieldAppearances: false });
}
