import { deflateSync } from "node:zlib";
import type { PdfObjects } from "./pdf-objects.ts";

const header = "%PDF-1.5\n%\u00e2\u00e3\u00cf\u00d3\n";
const perStream = 1_000;

/** Where an object lies: at an offset of the file, or within a packed stream at an index. */
type Place = readonly [kind: 1 | 2, where: number, index: number];

/** Rows of a cross-reference stream, each a byte, four and two, written as differences to the row above. */
function rows(places: ReadonlyMap<number, Place>, size: number): Buffer {
  const width = 7;
  const plain = Buffer.alloc(size * width);
  for (const [number, [kind, where, index]] of places) {
    plain.writeUInt8(kind, number * width);
    plain.writeUInt32BE(where, number * width + 1);
    plain.writeUInt16BE(index, number * width + 5);
  }
  const up = Buffer.alloc(size * (width + 1));
  for (let row = 0; row < size; row++) {
    up[row * (width + 1)] = 2;
    for (let at = 0; at < width; at++) {
      const above = row > 0 ? (plain[(row - 1) * width + at] ?? 0) : 0;
      up[row * (width + 1) + 1 + at] = (plain[row * width + at] ?? 0) - above;
    }
  }
  return up;
}

/** Writes objects as a PDF 1.5 whose plain objects, the structure tree above all, lie packed in object streams: about half the size. */
export function packObjects({ objects, root, info, size }: PdfObjects): Uint8Array {
  const parts: Buffer[] = [];
  const places = new Map<number, Place>();
  let length = 0;
  const write = (part: Buffer | string): void => {
    const bytes = typeof part === "string" ? Buffer.from(part, "latin1") : part;
    parts.push(bytes);
    length += bytes.length;
  };
  const writeStream = (number: number, text: string, stream: Uint8Array): void => {
    places.set(number, [1, length, 0]);
    write(`${number} 0 obj\n${text}stream\n`);
    write(Buffer.from(stream.buffer, stream.byteOffset, stream.length));
    write("\nendstream\nendobj\n");
  };
  write(header);
  const plain: [number, string][] = [];
  for (const [number, { text, stream }] of objects) {
    if (stream) writeStream(number, text, stream);
    else plain.push([number, text]);
  }
  let next = size;
  for (let from = 0; from < plain.length; from += perStream) {
    const own = plain.slice(from, from + perStream);
    let offset = 0;
    const index = own.map(([number, text], at) => {
      places.set(number, [2, next, at]);
      const entry = `${number} ${offset}`;
      offset += text.length + 1;
      return entry;
    });
    const heads = `${index.join(" ")} `;
    const data = deflateSync(
      Buffer.from(`${heads}${own.map(([, text]) => `${text}\n`).join("")}`, "latin1"),
    );
    const told = `<</Type /ObjStm /N ${own.length} /First ${heads.length} /Filter /FlateDecode /Length ${data.length}>>\n`;
    writeStream(next++, told, data);
  }
  const table = length;
  places.set(next, [1, table, 0]);
  const data = deflateSync(rows(places, next + 1));
  const told = `<</Type /XRef /Size ${next + 1} /W [1 4 2] /Root ${root} 0 R /Info ${info} 0 R /Filter /FlateDecode /DecodeParms <</Predictor 12 /Columns 7>> /Length ${data.length}>>\n`;
  writeStream(next, told, data);
  write(`startxref\n${table}\n%%EOF\n`);
  return Buffer.concat(parts);
}
