import { PDFDocument } from "@cantoo/pdf-lib";
import * as fontkit from "fontkit";
import { cellGrid } from "./cell-grid.ts";
import { cropMarks } from "./crop-marks.ts";

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
