import { inflateSync } from "node:zlib";
import { packed } from "./packed.ts";
import type { PdfObject } from "./pdf-objects.ts";
import type { PdfReader } from "./pdf-reader.ts";
import { hexOf } from "./pdf-text.ts";
import { subsetFont } from "./subset-font.ts";

const perBlock = 100;

const code = (glyph: number): string => glyph.toString(16).toUpperCase().padStart(4, "0");

/** The map from glyphs to what they say. */
function unicodeMap(texts: readonly (readonly [number, string])[]): string {
  const blocks: string[] = [];
  for (let from = 0; from < texts.length; from += perBlock) {
    const own = texts.slice(from, from + perBlock);
    const lines = own.map(([glyph, says]) => `<${code(glyph)}> <${hexOf(says)}>`);
    blocks.push(`${own.length} beginbfchar\n${lines.join("\n")}\nendbfchar`);
  }
  return `/CIDInit /ProcSet findresource begin
12 dict begin
begincmap
/CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def
/CMapName /Adobe-Identity-UCS def
/CMapType 2 def
1 begincodespacerange
<0000> <FFFF>
endcodespacerange
${blocks.join("\n")}
endcmap
CMapName currentdict /CMap defineresource pop
end
end`;
}

/** Widths of glyphs in rising order, those that follow each other in one list. */
function widthList(widths: readonly (readonly [number, number])[]): string {
  let list = "";
  let next = -1;
  for (const [glyph, width] of widths) {
    list += glyph === next ? ` ${width}` : `${next < 0 ? "" : "] "}${glyph} [${width}`;
    next = glyph + 1;
  }
  return next < 0 ? "" : `${list}]`;
}

/** The objects of a font that is to show only the given glyphs; `add` gives each a number. `index` makes its name, alike in
 * every file that uses its fonts in the same order. Undefined for a font that is no composite TrueType font. */
export function settleFont(
  reader: PdfReader,
  font: number,
  {
    used,
    index,
    add,
  }: {
    readonly used: ReadonlySet<number>;
    readonly index: number;
    readonly add: (object: PdfObject) => number;
  },
): PdfObject | undefined {
  const told = reader.textOf(font);
  const inner = reader.textOf(Number(/\/DescendantFonts \[(\d+)/.exec(told)?.[1] ?? 0));
  const described = reader.textOf(reader.reference(inner, "FontDescriptor"));
  const file = reader.packedOf(reader.reference(described, "FontFile2"));
  if (!file) return undefined;
  const glyphs = [...used].sort((a, b) => a - b);
  const { text, widthOf } = reader.glyphsOf(font);
  const says = glyphs.flatMap((glyph) => {
    const one = text.get(glyph);
    return one === undefined ? [] : [[glyph, one] as const];
  });
  const outlines = subsetFont(inflateSync(file), glyphs);
  const base = /\/BaseFont \/[A-Z]{6}\+(\S+)/.exec(inner)?.[1] ?? "Font";
  const name = `${String.fromCharCode(65 + index).repeat(6)}+${base}`;
  const program = add(packed(outlines, `/Length1 ${outlines.length}`));
  const descriptor = add({
    text: described
      .replace(/\/FontName \S+/, `/FontName /${name}`)
      .replace(/\/FontFile2 \d+ 0 R/, `/FontFile2 ${program} 0 R`),
  });
  const measured = glyphs.map((glyph) => [glyph, widthOf(glyph)] as const);
  const descendant = add({
    text: `<</Type/Font/Subtype/CIDFontType2/BaseFont /${name}/FontDescriptor ${descriptor} 0 R/CIDToGIDMap/Identity/CIDSystemInfo<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>/W [${widthList(measured)}]>>`,
  });
  const unicode = add(packed(Buffer.from(unicodeMap(says), "latin1")));
  return {
    text: `<</Type/Font/Subtype /Type0/BaseFont /${name}/Encoding/Identity-H/DescendantFonts [${descendant} 0 R]/ToUnicode ${unicode} 0 R>>`,
  };
}
