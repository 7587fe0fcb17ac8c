/** A cell of an imposed sheet, millimetres from its lower left. */
export type Cell = { readonly x: number; readonly y: number };

/** Room for crop marks and the slug line around the cards, and the gap between them, millimetres. */
const edge = 9;
const gap = 6;

/** Where cards of one size lie on a paper, rows from the top, centred; as many as leave room for crop marks, one where none would. */
export function cellGrid(
  [paperWidth, paperHeight]: readonly [number, number],
  [width, height]: readonly [number, number],
): readonly Cell[] {
  const along = (paper: number, card: number): number =>
    Math.max(1, Math.floor((paper - 2 * edge + gap) / (card + gap)));
  const [columns, rows] = [along(paperWidth, width), along(paperHeight, height)];
  const left = (paperWidth - columns * width - (columns - 1) * gap) / 2;
  const top = (paperHeight + rows * height + (rows - 1) * gap) / 2;
  return Array.from({ length: columns * rows }, (_, index) => ({
    x: left + (index % columns) * (width + gap),
    y: top - height - Math.floor(index / columns) * (height + gap),
  }));
}
