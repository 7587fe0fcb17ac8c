/** The tables that a TrueType font inside a PDF needs; what lays text out and names the font is left out. */
const kept = ["glyf", "head", "hhea", "hmtx", "loca", "maxp", "prep"] as const;
const metric = 4;
const moreParts = 0x20;
const wordArguments = 0x1;
const scales: readonly (readonly [flag: number, bytes: number])[] = [
  [0x8, 2],
  [0x40, 4],
  [0x80, 8],
];

type Tables = ReadonlyMap<string, Buffer>;

function tablesOf(font: Buffer): Tables {
  const tables = new Map<string, Buffer>();
  for (let entry = 12; entry < 12 + font.readUInt16BE(4) * 16; entry += 16) {
    const [from, length] = [font.readUInt32BE(entry + 8), font.readUInt32BE(entry + 12)];
    tables.set(font.toString("latin1", entry, entry + 4), font.subarray(from, from + length));
  }
  return tables;
}

/** The glyphs that a glyph is put together from. */
function partsOf(glyph: Buffer): readonly number[] {
  const parts: number[] = [];
  if (glyph.length < 10 || glyph.readInt16BE(0) >= 0) return parts;
  for (let at = 10, flags = moreParts; flags & moreParts; ) {
    flags = glyph.readUInt16BE(at);
    parts.push(glyph.readUInt16BE(at + 2));
    at += 4 + (flags & wordArguments ? 4 : 2);
    at += scales.find(([flag]) => flags & flag)?.[1] ?? 0;
  }
  return parts;
}

function joined(tables: readonly (readonly [string, Buffer])[]): Buffer {
  const head = Buffer.alloc(12 + tables.length * 16);
  const power = Math.floor(Math.log2(tables.length));
  head.writeUInt32BE(0x00010000, 0);
  head.writeUInt16BE(tables.length, 4);
  head.writeUInt16BE(16 * 2 ** power, 6);
  head.writeUInt16BE(power, 8);
  head.writeUInt16BE(16 * (tables.length - 2 ** power), 10);
  const parts = [head];
  let at = head.length;
  for (const [index, [name, table]] of tables.entries()) {
    const padded = Buffer.alloc(Math.ceil(table.length / 4) * 4);
    table.copy(padded);
    let sum = 0;
    for (let word = 0; word < padded.length; word += 4)
      sum = (sum + padded.readUInt32BE(word)) >>> 0;
    const entry = 12 + index * 16;
    head.write(name, entry, "latin1");
    head.writeUInt32BE(sum, entry + 4);
    head.writeUInt32BE(at, entry + 8);
    head.writeUInt32BE(table.length, entry + 12);
    parts.push(padded);
    at += padded.length;
  }
  return Buffer.concat(parts);
}

/** Leaves of a TrueType font only the glyphs used, under the numbers they had, and only the tables that a PDF needs. The
 * result depends on the font and on `used` alone, not on what else an earlier subset kept. */
export function subsetFont(font: Buffer, used: Iterable<number>): Buffer {
  const tables = tablesOf(font);
  const table = (name: string): Buffer => tables.get(name) ?? Buffer.alloc(0);
  const long = table("head").readInt16BE(50) === 1;
  const offset = (glyph: number): number =>
    long ? table("loca").readUInt32BE(glyph * 4) : table("loca").readUInt16BE(glyph * 2) * 2;
  const outline = (glyph: number): Buffer =>
    table("glyf").subarray(offset(glyph), offset(glyph + 1));
  const glyphs = new Set([0, ...used]);
  for (const glyph of glyphs) for (const part of partsOf(outline(glyph))) glyphs.add(part);
  const count = Math.max(...glyphs) + 1;
  const metrics = table("hhea").readUInt16BE(34);
  const hmtx = Buffer.alloc(count * metric);
  const loca = Buffer.alloc((count + 1) * 4);
  const outlines: Buffer[] = [];
  let at = 0;
  for (let glyph = 0; glyph < count; glyph++) {
    if (glyphs.has(glyph)) {
      const own = outline(glyph);
      outlines.push(own, Buffer.alloc(-own.length & 3));
      at += own.length + (-own.length & 3);
      const wide = Math.min(glyph, metrics - 1) * metric;
      const bearing = glyph < metrics ? wide + 2 : metrics * metric + (glyph - metrics) * 2;
      table("hmtx").copy(hmtx, glyph * metric, wide, wide + 2);
      table("hmtx").copy(hmtx, glyph * metric + 2, bearing, bearing + 2);
    }
    loca.writeUInt32BE(at, (glyph + 1) * 4);
  }
  const [head, hhea, maxp] = ["head", "hhea", "maxp"].map((name) => Buffer.from(table(name)));
  head?.writeInt16BE(1, 50);
  head?.writeUInt32BE(0, 8);
  hhea?.writeUInt16BE(count, 34);
  maxp?.writeUInt16BE(count, 4);
  const made = { glyf: Buffer.concat(outlines), head, hhea, hmtx, loca, maxp };
  const all = new Map([...tables, ...Object.entries(made)]);
  return joined(
    kept.flatMap((name) => {
      const own = all.get(name);
      return own && own.length > 0 ? [[name, own] as const] : [];
    }),
  );
}
