import { around, type Box, grown, overlaps } from "./box.ts";
import type { OutlineRails } from "./outline-rails.ts";
import {
  lineForms,
  type RegionForm,
  type RegionMark,
  type RegionWish,
  uprightForms,
  wordForms,
} from "./region-forms.ts";

/** What regions are named around: the free area, the plate, and the boxes of labels and leaders. */
export type RegionField = {
  readonly area: Box;
  readonly rails: OutlineRails;
  readonly boxes: readonly Box[];
};

type Side = "above" | "below";

/** Clear space to either side of a row: a region's name must not read on into a label. */
const beside = 2;

/** Height of a row of region words, and the clear space before it, millimetres. */
export const regionRow = { height: 5.1, clear: 0.6 } as const;
/** What a region's words take beside the plate besides their width. */
export const uprightRoom = 3.4;

/** How far the plate and its labels go towards a side over a stretch of the figure. */
function farthest({ rails, boxes }: RegionField, side: Side, from: number, to: number): number {
  const here = boxes.filter((box) => box.x0 - beside < to && box.x1 + beside > from);
  return side === "below"
    ? Math.max(rails(side, from, to), ...here.map(({ y1 }) => y1)) + regionRow.clear
    : Math.min(rails(side, from, to), ...here.map(({ y0 }) => y0)) - regionRow.clear;
}

const inArea = ({ area }: RegionField, form: RegionForm): boolean =>
  form.from >= area.x0 && form.to <= area.x1;

/** A region's mark in a row that begins at `y` and goes away from the plate; undefined where it leaves the area. */
function inRow(
  field: RegionField,
  form: RegionForm,
  side: Side,
  y: number,
): RegionMark | undefined {
  const [y0, y1] = side === "below" ? [y, y + regionRow.height] : [y - regionRow.height, y];
  if (y0 < field.area.y0 || y1 > field.area.y1) return undefined;
  return form.draw(y0, y1);
}

/** All regions in one row on a side, each in its fullest form that fits. */
function together(field: RegionField, wishes: readonly RegionWish[], side: Side): RegionMark[] {
  const forms = wishes.flatMap((wish) => lineForms(wish).find((form) => inArea(field, form)) ?? []);
  if (forms.length < wishes.length) return [];
  const edges = forms.map(({ from, to }) => farthest(field, side, from, to));
  const y = side === "below" ? Math.max(...edges) : Math.min(...edges);
  const marks = forms.flatMap((form) => inRow(field, form, side, y) ?? []);
  return marks.length < wishes.length ? [] : marks;
}

/** The first of some forms that fits in a row of its own below or above its part of the plate. */
function inOwnRow(field: RegionField, forms: readonly RegionForm[]): RegionMark | undefined {
  for (const form of forms.filter((one) => inArea(field, one))) {
    for (const side of ["below", "above"] as const) {
      const mark = inRow(field, form, side, farthest(field, side, form.from, form.to));
      if (mark) return mark;
    }
  }
  return undefined;
}

/** A region named beyond its outer end. */
function beyond(field: RegionField, wish: RegionWish): RegionMark | undefined {
  const [top, bottom] = [
    field.rails("above", wish.from, wish.to),
    field.rails("below", wish.from, wish.to),
  ];
  const near = field.boxes.filter((box) => box.y0 < bottom && box.y1 > top);
  const end =
    wish.outer === -1
      ? Math.min(field.rails("left", top, bottom), ...near.map(({ x0 }) => x0))
      : Math.max(field.rails("right", top, bottom), ...near.map(({ x1 }) => x1));
  return uprightForms(wish, end, [top, bottom], regionRow.height).find(
    ({ words }) =>
      words.x0 >= field.area.x0 &&
      words.x1 <= field.area.x1 &&
      !field.boxes.some((box) => overlaps(box, words, 0.6)),
  );
}

/** One region where there is room for it, with a line along its part of the plate; else its words alone there or a line beyond its
 * end, whichever says better what is longer, along or across. */
function alone(field: RegionField, wish: RegionWish): RegionMark | undefined {
  const lined = inOwnRow(field, lineForms(wish));
  if (lined) return lined;
  const ways = [() => inOwnRow(field, wordForms(wish)), () => beyond(field, wish)];
  const across =
    field.rails("below", wish.from, wish.to) - field.rails("above", wish.from, wish.to);
  const [first, second] = wish.to - wish.from > across ? ways : ways.toReversed();
  return first?.() ?? second?.();
}

/** The box that a mark takes with its lines. */
export function markBox({ words, lines }: RegionMark): Box {
  const ends = lines.flat().map(([x, y]) => ({ x0: x, y0: y, x1: x, y1: y }));
  return around([words, ...ends]);
}

/** Names regions around a plate whose labels have their places: in one row below or above where there is room, else each for itself.
 * A region that finds no room has no mark. */
export function regionMarks(field: RegionField, wishes: readonly RegionWish[]): RegionMark[] {
  for (const side of ["below", "above"] as const) {
    const row = together(field, wishes, side);
    if (row.length > 0) return row;
  }
  const marks: RegionMark[] = [];
  for (const wish of wishes) {
    const taken = marks.map((mark) => grown(markBox(mark), regionRow.clear));
    const mark = alone({ ...field, boxes: [...field.boxes, ...taken] }, wish);
    if (mark) marks.push(mark);
  }
  return marks;
}
