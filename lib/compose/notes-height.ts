import type { FormatKind } from "../model/format.ts";
import type { SheetFrame } from "../model/sheet-frame.ts";
import { typeSizes } from "../model/type-sizes.ts";
import type { Composing } from "./composing.ts";
import { linesOf } from "./printed-lines.ts";

/** Height of a line of notes as a part of its font size, and millimetres between two columns. */
const leading = 1.26;
const columnGap = 5;

/** Millimetres that the cautions, in two columns, and the signed findings beneath them take of a sheet's height. */
export function notesHeight(
  { pictures }: Composing,
  kind: FormatKind,
  { format, cautions, signed }: Pick<SheetFrame, "format" | "cautions" | "signed">,
): number {
  const width = format.width - 2 * format.margin;
  const size = typeSizes(kind, format).note;
  const lines = (signal: string, text: string, column: number): number =>
    linesOf(pictures, [{ text: signal, weight: 700 }, { text }], { width: column, size });
  const half = (width - columnGap) / 2;
  const warned = cautions.reduce((sum, one) => sum + lines(one.signal, one.text, half), 0);
  const told = signed.reduce((sum, { words }) => sum + lines("SIGNED", words, width), 0);
  return (Math.ceil(warned / 2) + told) * size * leading;
}
