/** The four line widths, millimetres. */
export const strokes = { hair: 0.25, line: 0.35, bold: 0.5, heavy: 0.7 } as const;
export type Stroke = keyof typeof strokes;

/** Paints: metal is white with an ink outline; the accent is dark enough for text (contrast over 7:1 on white). */
export const paints = {
  ink: "#000000",
  metal: "#ffffff",
  accent: "#17405f",
  tint: "#e6edf2",
  none: "none",
} as const;
export type Paint = keyof typeof paints;

/** Dash patterns, millimetres: hidden edges, and centre lines. */
export const dashes = { hidden: [0.9, 0.6], centre: [3, 0.7, 0.5, 0.7] } as const;
export type Dash = keyof typeof dashes;

/** Type sizes in figures, millimetres of font size; the smallest still has capitals of 2.3 mm. */
export const typeSizes = { called: 6.5, strong: 4.6, body: 4, small: 3.5 } as const;
export type TypeSize = keyof typeof typeSizes;
/** Height of a line with the room to the next, as a part of its font size: of words, and of numbers that stand alone. */
export const leading = { words: 1.14, numbers: 1.3 } as const;
/** Sizes that stand apart, millimetres of font size: a hole's label and the notes of a plate map, and the least that words in a narrow place may have. */
export const apartSizes = { label: 4.8, note: 3.8, least: 3 } as const;

/** The one family and its weights in figures. */
export const family = "Atkinson Hyperlegible Next";
const weights = [400, 600, 700] as const;
export type Weight = (typeof weights)[number];

/** What stays clear round a drawing so that its outermost line is whole, millimetres: a picture in a slot, a line's half width, a bold line's, a close frame, a wide one. */
export const edges = { slot: 0.35, line: 0.4, bold: 0.5, close: 0.6, wide: 1 } as const;
/** Room between two things, millimetres, from what all but touches to blocks of words and pictures. */
export const gaps = {
  touching: 0.4,
  shortened: 0.9,
  slot: 0.7,
  broken: 1.4,
  endView: 1.6,
  words: 2,
  place: 2.4,
  pair: 5,
  block: 6,
} as const;
/** Arrows, millimetres: the filled head, half its width, and the tallest bow of one that turns. */
export const arrows = { head: 2.6, half: 1.2, bow: 7.5 } as const;
/** Lines of measures, millimetres: the filled tip, half its width, the least length with the tips inside, how far the line goes on where they stand outside,
 * how far an extension goes past it. */
export const measures = { tip: 1.7, half: 0.55, inside: 4.4, beyond: 2.6, past: 0.8 } as const;
/** Leaders of labels, millimetres: half the bar at their end, and how far inside the label's box it lies. */
export const leaders = { halfBar: 0.9, inset: 0.45 } as const;
/** Marks, millimetres: the chequered strip of look-alikes and its least height, the side of a right angle's mark, a break line's room. */
export const marks = { strip: 1.6, stripHeight: 8, square: 2.2, broken: 0.6 } as const;

/** Dots that mean bone, millimetres: how far apart their rows and columns stand, and how wide they are. */
export const dots = {
  cortex: { step: 0.8, size: 0.4 },
  marrow: { step: 1.5, size: 0.35 },
} as const;
export type Dots = keyof typeof dots;
