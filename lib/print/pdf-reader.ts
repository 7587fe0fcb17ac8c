import { inflateSync } from "node:zlib";
import type { PdfObjects } from "./pdf-objects.ts";

/** How many hex digits make a glyph, what each stands for, and how far it takes the pen in thousandths of the size. */
export type Glyphs = {
  readonly digits: number;
  readonly text: ReadonlyMap<number, string>;
  readonly widthOf: (glyph: number) => number;
};

/** Looks into the objects of a PDF as Chromium writes it. */
export type PdfReader = {
  readonly textOf: (object: number) => string;
  /** A stream, unpacked, in Latin-1; empty where there is none. */
  readonly streamOf: (object: number) => string;
  /** A stream as it lies in the file. */
  readonly packedOf: (object: number) => Uint8Array | undefined;
  /** The object that a key of an object's text refers to; 0 for none. */
  readonly reference: (text: string, key: string) => number;
  /** Resources of a kind by the names a page calls them. */
  readonly named: (text: string, kind: string) => ReadonlyMap<string, number>;
  /** What the glyphs of a font stand for. */
  readonly glyphsOf: (font: number) => Glyphs;
  /** All pages in order. */
  readonly pages: readonly number[];
};

const hex = (text: string): number => Number.parseInt(text, 16);
const utf16 = (text: string): string =>
  (text.match(/.{4}/g) ?? []).map((unit) => String.fromCharCode(hex(unit))).join("");

function glyphTexts(map: string): ReadonlyMap<number, string> {
  const texts = new Map<number, string>();
  for (const [, section = ""] of map.matchAll(/beginbfchar([\s\S]*?)endbfchar/g))
    for (const [, code = "", text = ""] of section.matchAll(/<(\w+)>\s*<(\w+)>/g))
      texts.set(hex(code), utf16(text));
  for (const [, section = ""] of map.matchAll(/beginbfrange([\s\S]*?)endbfrange/g))
    for (const [, from = "", to = "", text = ""] of section.matchAll(
      /<(\w+)>\s*<(\w+)>\s*<(\w+)>/g,
    ))
      for (let code = hex(from); code <= hex(to); code++)
        texts.set(code, String.fromCharCode(hex(text) + code - hex(from)));
  return texts;
}

/** The width of a glyph that its font does not tell, after the PDF standard. */
const usualWidth = 1_000;

function glyphWidths(text: string): Glyphs["widthOf"] {
  const widths = new Map<number, number>();
  const list = /\/W \[((?:[^[\]]|\[[^\]]*\])*)\]/.exec(text)?.[1] ?? "";
  for (const [, first, run, from, to, width] of list.matchAll(
    /(\d+) \[([^\]]*)\]|(\d+) (\d+) ([\d.]+)/g,
  )) {
    const each = run?.trim().split(/\s+/).map(Number) ?? [];
    for (const [index, one] of each.entries()) widths.set(Number(first) + index, one);
    for (let code = Number(from); code <= Number(to); code++) widths.set(code, Number(width));
  }
  const usual = Number(/\/DW (\d+)/.exec(text)?.[1] ?? usualWidth);
  return (glyph) => widths.get(glyph) ?? usual;
}

/** A reader of a PDF that was taken apart. */
export function pdfReader({ objects, root }: PdfObjects): PdfReader {
  const textOf = (object: number): string => objects.get(object)?.text ?? "";
  const packedOf = (object: number): Uint8Array | undefined => objects.get(object)?.stream;
  const streamOf = (object: number): string => {
    const { text = "", stream, plain: known } = objects.get(object) ?? {};
    if (known !== undefined) return known;
    if (!stream) return "";
    const plain = text.includes("/FlateDecode") ? inflateSync(stream) : Buffer.from(stream);
    return plain.toString("latin1");
  };
  const reference = (text: string, key: string): number =>
    Number(new RegExp(`/${key} (\\d+) 0 R`).exec(text)?.[1] ?? 0);
  const named = (text: string, kind: string): ReadonlyMap<string, number> => {
    const inner = new RegExp(`/${kind} <<([^>]*)>>`).exec(text)?.[1] ?? "";
    return new Map(
      [...inner.matchAll(/\/(\S+) (\d+) 0 R/g)].map(([, name = "", to]) => [name, Number(to)]),
    );
  };
  const known = new Map<number, Glyphs>();
  const glyphsOf = (font: number): Glyphs => {
    const text = textOf(font);
    const found = known.get(font) ?? {
      digits: text.includes("/Type0") ? 4 : 2,
      text: glyphTexts(streamOf(reference(text, "ToUnicode"))),
      widthOf: glyphWidths(textOf(Number(/\/DescendantFonts \[(\d+)/.exec(text)?.[1] ?? 0))),
    };
    known.set(font, found);
    return found;
  };
  const pagesBelow = (object: number): number[] => {
    const kids = /\/Kids \[([^\]]*)\]/.exec(textOf(object))?.[1];
    return kids === undefined
      ? [object]
      : [...kids.matchAll(/(\d+) 0 R/g)].flatMap(([, kid]) => pagesBelow(Number(kid)));
  };
  const pages = pagesBelow(reference(textOf(root), "Pages"));
  return { textOf, streamOf, packedOf, reference, named, glyphsOf, pages };
}
