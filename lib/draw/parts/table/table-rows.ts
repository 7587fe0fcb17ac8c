import type { BackTable } from "../../../model/figure.ts";
import type { Interfaces } from "../../../model/interfaces.ts";
import { type Column, tableColumns } from "../../layout/table-columns.ts";
import { textWidth } from "../../text-widths.ts";
import { gaps, typeSizes } from "../../tokens.ts";
import { instrumentShape } from "../instrument-parts.ts";
import { shapeHalf } from "../shape.ts";
import { stripWidth } from "../tray/look-alike-strip.ts";
import { setLines, type TextBlock } from "../tray/slot-text.ts";

type Group = BackTable["groups"][number];
export type TableItem = Group["items"][number];
/** A column of the table, mm from its block's left edge; without an item a place left free. */
export type TablePlace = {
  readonly item: TableItem | undefined;
  readonly x: number;
  readonly width: number;
  /** What tells the item from its look-alikes, set in lines. */
  readonly tell?: TextBlock;
};
/** The places under one called-out screw, mm from the table's left edge. */
export type TableBlock = {
  readonly called: string;
  readonly places: readonly TablePlace[];
  readonly x: number;
  readonly width: number;
};

const letter = typeSizes.small;
/** Millimetres: between places, between blocks, the width of words that tell an item from another, and of a place left free. */
const [gap, apart, tellWidth] = [gaps.place, gaps.block, 24];
export const freeWords = "free";

/** Words in which a number stays with its unit when lines are broken. */
const joined = (words: string): string => words.replace(/(\d) (?=[a-z"°N])/gi, "$1\u00a0");

function placeOf(item: Column<TableItem & { id: string }>, interfaces: Interfaces, scale: number) {
  if (item === undefined) return { item: undefined, width: textWidth(freeWords, letter) };
  const [noun, number] = item.words;
  const tell = item.alike === "" ? undefined : setLines(joined(item.alike), letter, 400, tellWidth);
  const { segments } = instrumentShape(item.instrument, interfaces);
  const strip = tell === undefined ? 0 : 2 * stripWidth;
  const width = Math.max(
    2 * shapeHalf({ segments }) * scale + strip,
    textWidth(noun, letter),
    textWidth(number, letter, 700),
    tell?.width ?? 0,
  );
  return { item, width, ...(tell && { tell }) };
}

/** Groups in order of use, look-alikes at least two columns apart, as many to a row as `most` mm take; the first row is the nearest. */
export function tableRows(
  groups: readonly Group[],
  interfaces: Interfaces,
  scale: number,
  { edge, most }: { readonly edge: number; readonly most: number },
): readonly (readonly TableBlock[])[] {
  const columns = tableColumns(
    groups.map(({ items }) => items.map((item) => ({ ...item, id: item.instrument.id }))),
  );
  const rows: TableBlock[][] = [];
  let next = edge;
  for (const [index, { called }] of groups.entries()) {
    let x = 0;
    const places = (columns[index] ?? []).map((item): TablePlace => {
      const place = placeOf(item, interfaces, scale);
      const at = x;
      x += place.width + gap;
      return { ...place, x: at };
    });
    const width = Math.max(x - gap, textWidth(called, letter, 600));
    const row = rows.at(-1);
    if (row === undefined || next + width > most) {
      rows.push([{ called, places, x: edge, width }]);
      next = edge + width + apart;
    } else {
      row.push({ called, places, x: next, width });
      next += width + apart;
    }
  }
  return rows;
}
