import type { Pictures } from "../model/figure.ts";
import type { WarningBox, WarningLine } from "../model/sheet-frame.ts";
import { type Column, linesOf, type Run } from "./printed-lines.ts";

const runs = ({ subject, words }: WarningLine): readonly Run[] => [
  { text: subject, weight: 700 },
  { text: words },
];

/** Where the lines stand that a box has no room for. */
export const elsewhere = "on the site.";

/** A box with the first of the ranked lines that fit `room` printed lines beneath its title, each on a line of its own; and a word where the rest stands. */
export function warningBox(
  pictures: Pick<Pictures, "textWidth">,
  title: string,
  ranked: readonly WarningLine[],
  room: Column & { readonly lines: number },
): WarningBox {
  const column = { ...room, hang: room.size };
  const printed = (lines: readonly WarningLine[]): number =>
    lines.reduce(
      (sum, { other, ...line }) =>
        sum + linesOf(pictures, [line, ...(other ? [other] : [])].flatMap(runs), column),
      1,
    );
  const cut = (shown: number): readonly WarningLine[] =>
    shown === ranked.length
      ? ranked
      : [...ranked.slice(0, shown), { subject: `${ranked.length - shown} more`, words: elsewhere }];
  let shown = ranked.length;
  while (shown > 0 && printed(cut(shown)) > room.lines) shown -= 1;
  return { title, lines: cut(shown) };
}
