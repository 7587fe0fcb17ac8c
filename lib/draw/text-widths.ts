import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { create, type Font } from "fontkit";
import type { Weight } from "./tokens.ts";

const slack = 1.02;
const resolve = createRequire(import.meta.url).resolve;
const fonts = new Map<string, Font>();
const widths = new Map<string, number>();

function font(subset: "latin" | "latin-ext", weight: Weight): Font {
  const name = `atkinson-hyperlegible-next-${subset}-${weight}-normal.woff2`;
  const found =
    fonts.get(name) ??
    create(readFileSync(resolve(`@fontsource/atkinson-hyperlegible-next/files/${name}`)));
  fonts.set(name, found);
  return found;
}

function fontOf(letter: string, weight: Weight): Font {
  const point = letter.codePointAt(0) ?? 0;
  const latin = font("latin", weight);
  if (latin.hasGlyphForCodePoint(point)) return latin;
  const extended = font("latin-ext", weight);
  if (extended.hasGlyphForCodePoint(point)) return extended;
  throw new Error(
    `The typeface lacks the character "${letter}" (U+${point.toString(16).toUpperCase().padStart(4, "0")})`,
  );
}

/** Width of one line of words in millimetres at `size` mm of font size, its figures all of one width as sheets set them, with 2 % to spare; throws on a character that the typeface lacks. */
export function textWidth(text: string, size: number, weight: Weight = 400): number {
  const key = `${weight} ${text}`;
  const known = widths.get(key) ?? measure(text, weight);
  widths.set(key, known);
  return known * size * slack;
}

function measure(text: string, weight: Weight): number {
  const runs: { font: Font; text: string }[] = [];
  for (const letter of text) {
    const face = fontOf(letter, weight);
    const last = runs.at(-1);
    if (last?.font === face) last.text += letter;
    else runs.push({ font: face, text: letter });
  }
  return runs.reduce(
    (sum, run) => sum + run.font.layout(run.text, ["tnum"]).advanceWidth / run.font.unitsPerEm,
    0,
  );
}
