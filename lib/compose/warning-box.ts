import type { WarningBox, WarningLine } from "../model/sheet.ts";

/** Mean width of a letter as a part of the font size, a little generous. */
const meanLetter = 0.46;

/** Printed lines that `words` take at `size` mm of font size in a column of `width` mm; an estimate that the browser later measures. */
export function linesOf(words: string, width: number, size: number): number {
  return Math.max(1, Math.ceil((words.length * meanLetter * size) / width));
}

/** A box with the first of the ranked lines that fit `room` printed lines beneath its title, each on a line of its own; and a word where the rest stands. */
export function warningBox(
  title: string,
  ranked: readonly WarningLine[],
  room: { readonly lines: number; readonly width: number; readonly size: number },
): WarningBox {
  const printed = (lines: readonly WarningLine[]): number =>
    lines.reduce(
      (sum, { subject, words }) => sum + linesOf(`${subject} ${words}`, room.width, room.size),
      1,
    );
  const cut = (shown: number): readonly WarningLine[] =>
    shown === ranked.length
      ? ranked
      : [
          ...ranked.slice(0, shown),
          { subject: `${ranked.length - shown} more`, words: "on the site." },
        ];
  let shown = ranked.length;
  while (shown > 0 && printed(cut(shown)) > room.lines) shown -= 1;
  return { title, lines: cut(shown) };
}
