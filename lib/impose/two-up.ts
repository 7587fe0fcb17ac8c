import { PDFDocument, rgb } from "@cantoo/pdf-lib";

/** Cards of half a paper's size that are laid two on a page; sizes in millimetres. */
export type TwoUp = {
  readonly title: string;
  readonly subject: string;
  readonly paper: readonly [width: number, height: number];
  readonly card: readonly [width: number, height: number];
  readonly cards: readonly Uint8Array[];
  /** The day the PDF bears, ISO 8601. */
  readonly day: string;
};

const point = 72 / 25.4;
/** How long the line that shows where to cut is at each edge: it stays in the clear edge of the cards. */
const cut = 5;

/** A print-only PDF with two different cards on every page, one above the other, and short lines where the page is cut. It is
 * not tagged: the card's own PDF is the one to read. Same input, same bytes. */
export async function twoUp({
  title,
  subject,
  paper,
  card,
  cards,
  day,
}: TwoUp): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.setTitle(title);
  pdf.setSubject(subject);
  pdf.setKeywords(["print only", "not tagged"]);
  pdf.setCreationDate(new Date(`${day}T00:00:00Z`));
  pdf.setModificationDate(new Date(`${day}T00:00:00Z`));
  const [width, height] = paper;
  const left = (width - card[0]) / 2;
  const spare = (height - 2 * card[1]) / 2;
  for (let first = 0; first < cards.length; first += 2) {
    const page = pdf.addPage([width * point, height * point]);
    for (const [place, bytes] of cards.slice(first, first + 2).entries()) {
      const [form] = await pdf.embedPdf(bytes, [0]);
      const y = place === 0 ? height - card[1] : 0;
      if (form)
        page.drawPage(form, {
          x: left * point,
          y: y * point,
          width: card[0] * point,
          height: card[1] * point,
        });
    }
    const middle = (card[1] + spare) * point;
    for (const [from, to] of [
      [0, cut],
      [width - cut, width],
    ] as const)
      page.drawLine({
        start: { x: from * point, y: middle },
        end: { x: to * point, y: middle },
        thickness: 0.25,
        color: rgb(0, 0, 0),
      });
  }
  return pdf.save({ useObjectStreams: true, updateFieldAppearances: false });
}
