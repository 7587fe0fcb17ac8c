import type { Pen } from "../../canvas.ts";
import { textWidth } from "../../text-widths.ts";
import { leading, type Paint, type Weight } from "../../tokens.ts";

/** One run of words in a slot, its baseline `y` and start `x` in mm from the block's corner. */
export type Run = {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** Of its font, mm. */
  readonly size: number;
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
/** Between words in a row, as a part of the font size, and at least, mm. */
const [space, leastSpace] = [0.32, 1.8];

/** Words broken into lines no wider than `width` mm; a word that is wider stands alone. */
function wrapWords(text: string, size: number, weight: Weight, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    const longer = `${last ?? ""} ${word}`;
    if (last !== undefined && textWidth(longer, size, weight) <= width)
      lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** Words to be set in a row. */
export type RowPart = Omit<Run, "x" | "y">;

/** Runs that follow one another on as few rows as `width` mm allows. */
export function setRow(parts: readonly RowPart[], width: number): TextBlock {
  const rows: { readonly part: RowPart; readonly x: number; readonly long: number }[][] = [[]];
  let x = 0;
  for (const part of parts) {
    const long = textWidth(part.text, part.size, part.weight);
    if (x > 0 && x + long > width) {
      rows.push([]);
      x = 0;
    }
    rows.at(-1)?.push({ part, x, long });
    x += long + Math.max(leastSpace, space * part.size);
  }
  let height = 0;
  const runs = rows.flatMap((row): readonly Run[] => {
    const high = Math.max(...row.map(({ part }) => part.size * leading.words));
    const y = height + high * rise;
    height += high;
    return row.map(({ part, x }) => ({ ...part, x, y }));
  });
  return {
    runs,
    width: Math.max(...rows.flat().map(({ x, long }) => x + long)),
    height,
  };
}

/** Wrapped lines of one kind of words. */
export function setLines(text: string, size: number, weight: Weight, width: number): TextBlock {
  const lines = wrapWords(text, size, weight, width);
  return {
    runs: lines.map((line, index) => ({
      x: 0,
      y: (index + rise) * size * leading.words,
      text: line,
      size,
      weight,
    })),
    width: Math.max(...lines.map((line) => textWidth(line, size, weight))),
    height: lines.length * size * leading.words,
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
