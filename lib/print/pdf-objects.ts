import { Stop } from "../model/stop.ts";

/** One object of a PDF: its text in Latin-1 without the stream, the stream as it lies in the file, and unpacked where that is known. */
export type PdfObject = {
  readonly text: string;
  readonly stream?: Uint8Array;
  readonly plain?: string;
};

/** A PDF taken apart: objects by number in the order of the file; `root` and `info` are numbers. */
export type PdfObjects = {
  readonly objects: ReadonlyMap<number, PdfObject>;
  readonly root: number;
  readonly info: number;
  /** One more than the highest number. */
  readonly size: number;
};

const streamMark = ">> stream\n";
const endOfObject = "\nendobj\n";
const endOfStream = `\nendstream${endOfObject}`;

function unknown(what: string): Stop {
  return new Stop(
    5,
    `The browser's PDF is not built as expected: ${what}.`,
    "Use the Chromium the README names.",
  );
}

/** Takes apart a PDF as Chromium writes it: one table of plain objects, each stream with its length beside it. Stops with 5 at any other. */
export function pdfObjects(bytes: Uint8Array): PdfObjects {
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length);
  const latin1 = (from: number, to: number) => file.toString("latin1", from, to);
  const end = /startxref\n(\d+)\n%%EOF\s*$/.exec(
    latin1(Math.max(0, file.length - 64), file.length),
  );
  const table = Number(end?.[1] ?? Number.NaN);
  const [, listed = "", trailer = ""] =
    /^xref\n0 \d+\n([\s\S]*)trailer\n([\s\S]*)startxref/.exec(latin1(table || 0, file.length)) ??
    [];
  const of = (key: string) => Number(new RegExp(`/${key} (\\d+)`).exec(trailer)?.[1]);
  const [size, root, info] = [of("Size"), of("Root"), of("Info")];
  if (!size || !root || !info) throw unknown("no table of objects at its end");
  const places = [...listed.matchAll(/(\d{10}) \d{5} ([nf])/g)]
    .flatMap(([, at, kind], number) => (kind === "n" ? [{ number, from: Number(at) }] : []))
    .sort((a, b) => a.from - b.from);
  const objects = new Map<number, PdfObject>();
  for (const [index, { number, from }] of places.entries()) {
    const head = `${number} 0 obj\n`;
    const start = from + head.length;
    const next = places[index + 1]?.from ?? table;
    const cut = (tail: string) => next - tail.length;
    if (latin1(from, start) !== head || latin1(cut(endOfObject), next) !== endOfObject)
      throw unknown(`object ${number} is not where the table says`);
    if (latin1(cut(endOfStream), next) !== endOfStream) {
      objects.set(number, { text: latin1(start, cut(endOfObject)) });
      continue;
    }
    const mark = file.indexOf(streamMark, start, "latin1");
    const text = latin1(start, mark + 2);
    const stream = file.subarray(mark + streamMark.length, cut(endOfStream));
    if (Number(/\/Length (\d+)/.exec(text)?.[1]) !== stream.length)
      throw unknown(`the stream ${number} is not as long as it says`);
    objects.set(number, { text, stream });
  }
  return { objects, root, info, size };
}
