import { type PDFPage, rgb } from "@cantoo/pdf-lib";

const point = 72 / 25.4;
const length = 2;

/** Draws marks at the four corners of a card, outside it and `gap` away from it; millimetres from the page's lower left. */
export function cropMarks(
  page: PDFPage,
  { x, y }: { readonly x: number; readonly y: number },
  [width, height]: readonly [number, number],
  gap = 1,
): void {
  const line = (x1: number, y1: number, x2: number, y2: number): void =>
    page.drawLine({
      start: { x: x1 * point, y: y1 * point },
      end: { x: x2 * point, y: y2 * point },
      thickness: 0.25,
      color: rgb(0, 0, 0),
    });
  for (const [right, away] of [
    [x, -1],
    [x + width, 1],
  ] as const)
    for (const [up, off] of [
      [y, -1],
      [y + height, 1],
    ] as const) {
      line(right + away * gap, up, right + away * (gap + length), up);
      line(right, up + off * gap, right, up + off * (gap + length));
    }
}
