import { PDFDocument, type PDFPage, rgb } from "@cantoo/pdf-lib";
import * as fontkit from "fontkit";
import { type Cell, cellGrid } from "./cell-grid.ts";

/** What is laid on one paper: the fronts, and the backs where it is printed on both sides; sizes in millimetres. */
export type Imposition = {
  readonly title: string;
  readonly paper: readonly [width: number, height: number];
  readonly card: readonly [width: number, height: number];
  readonly front: Uint8Array;
  readonly back?: Uint8Array;
  /** How far the back is moved to meet the front: to the right and up. */
  readonly offset: readonly [right: number, up: number];
  /** Card, issue and date, as printed at the edge. */
  readonly slug: string;
  /** A TrueType or woff font for the slug line. */
  readonly font: Uint8Array;
  /** The day the PDF bears, ISO 8601. */
  readonly day: string;
};

const point = 72 / 25.4;
const markLength = 2;
const markGap = 1;
const black = rgb(0, 0, 0);

/** Crop marks at the four corners of a card, outside it. */
function cropMarks(
  page: PDFPage,
  { x, y }: Cell,
  [width, height]: readonly [number, number],
): void {
  const line = (x1: number, y1: number, x2: number, y2: number): void =>
    page.drawLine({
      start: { x: x1 * point, y: y1 * point },
      end: { x: x2 * point, y: y2 * point },
      thickness: 0.25,
      color: black,
    });
  for (const [right, away] of [
    [x, -1],
    [x + width, 1],
  ] as const)
    for (const [up, off] of [
      [y, -1],
      [y + height, 1],
    ] as const) {
      line(right + away * markGap, up, right + away * (markGap + markLength), up);
      line(right, up + off * markGap, right, up + off * (markGap + markLength));
    }
}

/** A print-only PDF with as many copies of a card as its paper takes, crop marks and slug line; backs mirrored for turning over the long edge.
 * It is not tagged: the card's own PDF is the one to read. Same input, same bytes. */
export async function imposed(job: Imposition): Promise<Uint8Array> {
  const { title, paper, card, front, back, offset, slug, day } = job;
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.registerFontkit(fontkit as unknown as Parameters<typeof pdf.registerFontkit>[0]);
  const font = await pdf.embedFont(job.font, { subset: true });
  pdf.setTitle(title);
  pdf.setSubject(slug);
  pdf.setKeywords(["print only", "not tagged"]);
  pdf.setCreationDate(new Date(`${day}T00:00:00Z`));
  pdf.setModificationDate(new Date(`${day}T00:00:00Z`));
  const cells = cellGrid(paper, card);
  const sides = [front, ...(back ? [back] : [])];
  for (const [side, bytes] of sides.entries()) {
    const page = pdf.addPage([paper[0] * point, paper[1] * point]);
    const [form] = await pdf.embedPdf(bytes, [0]);
    if (!form) continue;
    for (const cell of cells) {
      const [right, up] = side === 0 ? [0, 0] : offset;
      const x = side === 0 ? cell.x : paper[0] - cell.x - card[0];
      const placed = { x: x + right, y: cell.y + up };
      page.drawPage(form, {
        x: placed.x * point,
        y: placed.y * point,
        width: card[0] * point,
        height: card[1] * point,
      });
      if (side === 0) cropMarks(page, placed, card);
    }
    page.drawText(
      `${slug} · side ${side + 1} of ${sides.length} · turn over the long edge · print at 100 %`,
      {
        x: 9 * point,
        y: 4 * point,
        size: 7,
        font,
      },
    );
  }
  return pdf.save({ useObjectStreams: true, updateFieldAppearances: false });
}
