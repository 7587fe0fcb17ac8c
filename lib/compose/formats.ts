import type { Format } from "../model/sheet.ts";

/** Every paper format, millimetres. */
const formats = {
  "a4-landscape": { id: "a4-landscape", name: "A4 landscape", width: 297, height: 210 },
  "a4-portrait": { id: "a4-portrait", name: "A4 portrait", width: 210, height: 297 },
  "a5-landscape": { id: "a5-landscape", name: "A5 landscape", width: 210, height: 148 },
  "letter-landscape": {
    id: "letter-landscape",
    name: "Letter landscape",
    width: 279.4,
    height: 215.9,
  },
  "letter-portrait": {
    id: "letter-portrait",
    name: "Letter portrait",
    width: 215.9,
    height: 279.4,
  },
} as const satisfies Record<Format["id"], Format>;

/** The formats each kind of sheet is made in. */
export const landscape: readonly Format[] = [formats["a4-landscape"], formats["letter-landscape"]];
export const portrait: readonly Format[] = [formats["a4-portrait"], formats["letter-portrait"]];
export const small: readonly Format[] = [formats["a5-landscape"]];

/** Clear edge of every sheet, millimetres. */
export const edge = 8;
