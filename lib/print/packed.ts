import { deflateSync } from "node:zlib";
import type { PdfObject } from "./pdf-objects.ts";

/** A stream packed as tightly as it goes, with more entries for its dictionary. */
export function packed(plain: Buffer, entries = ""): PdfObject {
  const stream = deflateSync(plain, { level: 6 });
  return {
    text: `<<${entries}/Filter /FlateDecode/Length ${stream.length}>>\n`,
    stream,
    plain: plain.toString("latin1"),
  };
}
