import type { Pictures } from "../model/figure.ts";
import type { WarningBox, WarningLine } from "../model/sheet-frame.ts";
import { type Column, linesOf, type Run } from "./printed-lines.ts";

const runs = ({ subject, words }: WarningLine): readonly Run[] => [
  { text: subject, weight: 700 },
  { text: words },
];

/** Where the lines stand that a box has no room for. */
export const elsewhere = "on the site.";

/** Printed lines that a box of these takes with its title, in a column. */
export const boxLines = (
  pictures: Pick<Pictures, "textWidth">,
  lines: readonly WarningLine[],
  room: Column,
): number =>
  lines.reduce(
    (sum, { other, ...line }) =>
      sum +
      linesOf(pictures, [line, ...(other ? [other] : [])].flatMap(runs), {
        ...room,
        hang: room.size,
      }),
    1,
  );

/** A box with the first of the ranked lines that fit `room` printed lines beneath its title, each on a line of its own; and a word where the rest stands. */
export function warningBox(
  pictures: Pick<Pictures, "textWidth">,
  title: string,
  ranked: readonly WarningLine[],
  room: Column & { readonly lines: number },
): WarningBox {
  const cut = (shown: number): readonly WarningLine[] =>
    shown === ranked.length
      ? ranked
      : [...ranked.slice(0, shown), { subject: `${ranked.length - shown} more`, words: elsewhere }];
  let shown = ranked.length;
  while (shown > 0 && boxLines(pictures, cut(shown), room) > room.lines) shown -= 1;
  return { title, lines: cut(shown) };
}
