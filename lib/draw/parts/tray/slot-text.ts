import type { Pen } from "../../canvas.ts";
import { textWidth } from "../../text-widths.ts";
import { lineHeights, type Paint, type TypeSize, typeSizes, type Weight } from "../../tokens.ts";

/** One run of words in a slot, its baseline `y` and start `x` in mm from the block's corner. */
export type Run = {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly size: TypeSize;
  readonly weight: Weight;
  readonly colour?: Paint;
};

/** A block of set words with the room it takes, mm. */
export type TextBlock = {
  readonly runs: readonly Run[];
  readonly width: number;
  readonly height: number;
};

const rise = 0.76;
const space = 1.8;

/** Words broken into lines no wider than `width` mm; a word that is wider stands alone. */
function wrapWords(text: string, size: TypeSize, weight: Weight, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    const longer = `${last ?? ""} ${word}`;
    if (last !== undefined && textWidth(longer, typeSizes[size], weight) <= width)
      lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** Words to be set in a row. */
export type RowPart = Omit<Run, "x" | "y">;

/** Runs that follow one another on as few rows as `width` mm allows. */
export function setRow(parts: readonly RowPart[], width: number): TextBlock {
  const runs: Run[] = [];
  let [x, y, widest] = [0, 0, 0];
  let row = 0;
  for (const part of parts) {
    const long = textWidth(part.text, typeSizes[part.size], part.weight);
    if (x > 0 && x + long > width) [x, y, row] = [0, y + row, 0];
    row = Math.max(row, lineHeights[part.size]);
    runs.push({ ...part, x, y: y + lineHeights.strong * rise });
    widest = Math.max(widest, x + long);
    x += long + space;
  }
  return { runs, width: widest, height: y + row };
}

/** Wrapped lines of one kind of words. */
export function setLines(text: string, size: TypeSize, weight: Weight, width: number): TextBlock {
  const lines = wrapWords(text, size, weight, width);
  return {
    runs: lines.map((line, index) => ({
      x: 0,
      y: (index + rise) * lineHeights[size],
      text: line,
      size,
      weight,
    })),
    width: Math.max(...lines.map((line) => textWidth(line, typeSizes[size], weight))),
    height: lines.length * lineHeights[size],
  };
}

/** Blocks one under another. */
export function stacked(blocks: readonly TextBlock[]): TextBlock {
  let height = 0;
  const runs: Run[] = [];
  for (const block of blocks) {
    const top = height;
    runs.push(...block.runs.map((run) => ({ ...run, y: run.y + top })));
    height += block.height;
  }
  return { runs, width: Math.max(0, ...blocks.map((block) => block.width)), height };
}

/** Draws a block with its upper-left corner at the origin. */
export function drawText(pen: Pen, block: TextBlock): void {
  for (const { x, y, text, ...lettering } of block.runs) pen.words([x, y], text, lettering);
}
