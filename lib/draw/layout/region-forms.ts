import type { Box } from "./box.ts";
import type { Stretch } from "./stretch.ts";

/** A region to be named: its stretch of the figure, towards which side the plate ends there, and its words with their widths, the fullest first.
 * Millimetres. */
export type RegionWish = {
  readonly region: "head" | "shaft";
  readonly from: number;
  readonly to: number;
  readonly outer: -1 | 1;
  readonly words: readonly { readonly text: string; readonly width: number }[];
};

/** A region's line along the plate and the box of its words, figure millimetres. */
export type RegionMark = {
  readonly region: RegionWish["region"];
  readonly text: string;
  readonly words: Box;
  readonly lines: readonly Stretch[];
};

/** A region's line with its words in it or beyond its end: the stretch it takes, and the mark itself between two heights. */
export type RegionForm = {
  readonly from: number;
  readonly to: number;
  draw(y0: number, y1: number): RegionMark;
};

const [tick, gap, leastLine] = [1.1, 1, 1.6];

const across = (x: number, y: number): Stretch => [
  [x, y - tick],
  [x, y + tick],
];
const along = (from: number, to: number, y: number): Stretch => [
  [from, y],
  [to, y],
];

/** The ways to name a region along the plate: words in their line where it is long enough, else beyond its outer end. */
export function lineForms({ region, from, to, outer, words }: RegionWish): RegionForm[] {
  const middle = (from + to) / 2;
  const inside = words
    .filter(({ width }) => to - from >= width + 2 * (gap + leastLine))
    .map(({ text, width }): RegionForm => {
      const [x0, x1] = [middle - width / 2, middle + width / 2];
      const draw = (y0: number, y1: number): RegionMark => {
        const y = (y0 + y1) / 2;
        const line = [along(from, x0 - gap, y), along(x1 + gap, to, y)];
        const lines = [across(from, y), ...line, across(to, y)];
        return { region, text, words: { x0, x1, y0, y1 }, lines };
      };
      return { from, to, draw };
    });
  const outside = words.map(({ text, width }): RegionForm => {
    const x0 = outer === -1 ? from - gap - width : to + gap;
    const draw = (y0: number, y1: number): RegionMark => {
      const y = (y0 + y1) / 2;
      const lines = [across(from, y), along(from, to, y), across(to, y)];
      return { region, text, words: { x0, x1: x0 + width, y0, y1 }, lines };
    };
    return { from: Math.min(from, x0), to: Math.max(to, x0 + width), draw };
  });
  return [...inside, ...outside];
}

/** The ways to name a region beyond its outer end: an upright line there from top to bottom, its words outside it. */
export function uprightForms(
  { region, outer, words }: RegionWish,
  end: number,
  [top, bottom]: readonly [number, number],
  height: number,
): RegionMark[] {
  const x = end + outer * (gap + tick);
  const y = (top + bottom) / 2;
  const tie = (at: number): Stretch => [
    [x - tick, at],
    [x + tick, at],
  ];
  const lines: Stretch[] = [
    tie(top),
    [
      [x, top],
      [x, bottom],
    ],
    tie(bottom),
  ];
  return words.map(({ text, width }) => {
    const x0 = outer === -1 ? x - gap - width : x + gap;
    const box = { x0, x1: x0 + width, y0: y - height / 2, y1: y + height / 2 };
    return { region, text, words: box, lines };
  });
}

/** Parts of a region's stretch at which its name alone may stand, the middle first. */
const shifts = [0.5, 0.35, 0.65, 0.2, 0.8];

/** The ways to name a region by its words alone, somewhere along it. */
export function wordForms({ region, from, to, words }: RegionWish): RegionForm[] {
  return words.flatMap(({ text, width }) =>
    shifts.map((part): RegionForm => {
      const x0 = from + (to - from) * part - width / 2;
      const draw = (y0: number, y1: number): RegionMark => ({
        region,
        text,
        words: { x0, x1: x0 + width, y0, y1 },
        lines: [],
      });
      return { from: x0, to: x0 + width, draw };
    }),
  );
}
