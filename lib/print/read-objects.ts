import { inflateSync } from "node:zlib";
import type { PdfObjects } from "./pdf-objects.ts";

/** What is read in a PDF: its pages, the first page's size in points, and the text drawn on all of them. */
export type ReadPdf = {
  readonly pages: number;
  readonly size: readonly [width: number, height: number];
  readonly text: string;
};

type Glyphs = { readonly digits: number; readonly text: ReadonlyMap<number, string> };

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

/** Reads which glyphs are drawn and what they stand for; text that is only said and never drawn is not met. */
export function readObjects({ objects, root }: PdfObjects): ReadPdf {
  const textOf = (number: number): string => objects.get(number)?.text ?? "";
  const streamOf = (number: number): string => {
    const { text = "", stream } = objects.get(number) ?? {};
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
    };
    known.set(font, found);
    return found;
  };
  const drawn = (content: number, resources: string): string => {
    const fonts = named(resources, "Font");
    const forms = named(resources, "XObject");
    let glyphs: Glyphs | undefined;
    let text = "";
    for (const [, font, codes, form] of streamOf(content).matchAll(
      /\/(\S+) [\d.]+ Tf|<([0-9A-Fa-f]+)>(?!\s*>)|\/(\S+) Do/g,
    )) {
      if (font) glyphs = glyphsOf(fonts.get(font) ?? 0);
      else if (codes && glyphs)
        for (let at = 0; at < codes.length; at += glyphs.digits)
          text += glyphs.text.get(hex(codes.slice(at, at + glyphs.digits))) ?? "\ufffd";
      else if (form) {
        const to = forms.get(form) ?? 0;
        if (textOf(to).includes("/Subtype /Form")) text += drawn(to, textOf(to));
      }
    }
    return text;
  };
  const pagesBelow = (number: number): number[] => {
    const text = textOf(number);
    const kids = /\/Kids \[([^\]]*)\]/.exec(text)?.[1];
    return kids === undefined
      ? [number]
      : [...kids.matchAll(/(\d+) 0 R/g)].flatMap(([, kid]) => pagesBelow(Number(kid)));
  };
  const pages = pagesBelow(reference(textOf(root), "Pages"));
  const box = /\/MediaBox \[([^\]]*)\]/.exec(textOf(pages[0] ?? 0))?.[1] ?? "";
  const [left = 0, bottom = 0, right = 0, top = 0] = box.split(" ").map(Number);
  const text = pages.map((page) => drawn(reference(textOf(page), "Contents"), textOf(page)));
  return { pages: pages.length, size: [right - left, top - bottom], text: text.join("") };
}
