import type { WarningBox } from "../model/sheet.ts";

/** Mean width of a letter as a part of the font size, a little generous. */
const meanLetter = 0.52;

/** Printed lines that `words` take at `size` mm of font size in a column of `width` mm; an estimate that the browser later measures. */
export function linesOf(words: string, width: number, size: number): number {
  return Math.max(1, Math.ceil((words.length * meanLetter * size) / width));
}

/** A box with the first of the ranked lines that fit `room` printed lines, and a word where the rest stands. */
export function warningBox(
  title: string,
  ranked: readonly string[],
  room: { readonly lines: number; readonly width: number; readonly size: number },
): WarningBox {
  const cost = (line: string): number => linesOf(line, room.width, room.size);
  const total = ranked.reduce((sum, line) => sum + cost(line), 0);
  if (total <= room.lines) return { title, lines: ranked };
  const lines: string[] = [];
  let left = room.lines - 1;
  for (const line of ranked) {
    left -= cost(line);
    if (left < 0) break;
    lines.push(line);
  }
  const more = ranked.length - lines.length;
  return { title, lines: [...lines, `${more} more on the site.`] };
}
