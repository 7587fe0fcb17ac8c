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

/** The one family and its weights in figures. */
export const family = "Atkinson Hyperlegible Next";
const weights = [400, 600, 700] as const;
export type Weight = (typeof weights)[number];

/** Dots that mean bone, millimetres: how far apart their rows and columns stand, and how wide they are. */
export const dots = {
  cortex: { step: 0.8, size: 0.4 },
  marrow: { step: 1.5, size: 0.35 },
} as const;
export type Dots = keyof typeof dots;
