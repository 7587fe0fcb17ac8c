import type { Pictures } from "../model/figure.ts";
import type { WarningBox, WarningLine } from "../model/sheet-frame.ts";
import { type Column, linesOf, type Run } from "./printed-lines.ts";
import { partedWhereWide } from "./unparted.ts";

const runs = ({ subject, words }: WarningLine): readonly Run[] => [
  { text: subject, weight: 700 },
  { text: words },
];

type Measured = Pick<Pictures, "textWidth">;

/** A line in which a name that is wider than the box may be broken after all. */
function breakable(pictures: Measured, line: WarningLine, column: Column): WarningLine {
  const parted = (words: string, weight: 400 | 700): string =>
    partedWhereWide(
      words,
      (name) => pictures.textWidth(name, column.size, weight) > column.width - (column.hang ?? 0),
    );
  const { subject, words, other } = line;
  return {
    subject: parted(subject, 700),
    words: parted(words, 400),
    ...(other
      ? { other: { subject: parted(other.subject, 700), words: parted(other.words, 400) } }
      : {}),
  };
}

/** Printed lines that a box of these takes with its title on one line, in a column. */
export const boxLines = (pictures: Measured, lines: readonly WarningLine[], room: Column): number =>
  lines.reduce(
    (sum, { other, ...line }) =>
      sum +
      linesOf(pictures, [line, ...(other ? [other] : [])].flatMap(runs), {
        ...room,
        hang: room.size,
      }),
    1,
  );

/** A box with the first of the ranked lines that fit `room` printed lines, its title's among them, each on a line of its own; beside the title how many are left to the site. */
export function warningBox(
  pictures: Measured,
  title: string,
  ranked: readonly WarningLine[],
  room: Column & { readonly lines: number },
): WarningBox {
  const column = { ...room, hang: room.size };
  const lines = ranked.map((line) => breakable(pictures, line, column));
  const moreThan = (shown: number): string => `${lines.length - shown} more on the site.`;
  const printed = (shown: number): number =>
    boxLines(pictures, lines.slice(0, shown), room) -
    1 +
    linesOf(pictures, [{ text: title, weight: 700 }, { text: moreThan(shown) }], room);
  if (boxLines(pictures, lines, room) <= room.lines) return { title, lines };
  let shown = lines.length - 1;
  while (shown > 0 && printed(shown) > room.lines) shown -= 1;
  return {
    title,
    more: moreThan(shown),
    lines: lines.slice(0, shown),
    rest: lines.slice(shown),
  };
}
