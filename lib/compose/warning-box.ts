import type { WarningBox } from "../model/sheet.ts";

/** Mean width of a letter as a part of the font size, a little generous. */
const meanLetter = 0.46;

/** Printed lines that `words` take at `size` mm of font size in a column of `width` mm; an estimate that the browser later measures. */
export function linesOf(words: string, width: number, size: number): number {
  return Math.max(1, Math.ceil((words.length * meanLetter * size) / width));
}

/** A box with the first of the ranked lines that, running on after its title, fit `room` printed lines; and a word where the rest stands. */
export function warningBox(
  title: string,
  ranked: readonly string[],
  room: { readonly lines: number; readonly width: number; readonly size: number },
): WarningBox {
  const fits = (lines: readonly string[]): boolean =>
    linesOf([title, ...lines].join(" "), room.width, room.size) <= room.lines;
  if (fits(ranked)) return { title, lines: ranked };
  const more = (shown: number): string => `${ranked.length - shown} more on the site.`;
  let shown = ranked.length - 1;
  while (shown > 0 && !fits([...ranked.slice(0, shown), more(shown)])) shown -= 1;
  return { title, lines: [...ranked.slice(0, shown), more(shown)] };
}
