import type { Pictures } from "../model/figure.ts";

/** Words of one weight; several stand on a line one after the other. */
export type Run = { readonly text: string; readonly weight?: 400 | 600 | 700 };
/** Millimetres: a column, its font size, and how far lines after the first are indented. */
export type Column = { readonly width: number; readonly size: number; readonly hang?: number };

/** Printed lines that runs take in a column, broken at spaces as a browser breaks them, widths from the shipped typeface. */
export function linesOf(
  { textWidth }: Pick<Pictures, "textWidth">,
  runs: readonly Run[],
  { width, size, hang = 0 }: Column,
): number {
  let lines = 1;
  let taken = 0;
  for (const { text, weight = 400 } of runs)
    for (const word of text.split(" ").filter(Boolean)) {
      const room = lines === 1 ? width : width - hang;
      const wide = textWidth(word, size, weight);
      const gap = taken === 0 ? 0 : textWidth(" ", size, weight);
      if (taken > 0 && taken + gap + wide > room) {
        lines += 1;
        taken = wide;
      } else taken += gap + wide;
    }
  return lines;
}
