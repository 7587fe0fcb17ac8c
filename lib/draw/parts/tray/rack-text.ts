import type { TrayMapSlot } from "../../../model/figure.ts";
import { textWidth } from "../../text-widths.ts";
import { typeSizes } from "../../tokens.ts";
import type { Run, TextBlock } from "./slot-text.ts";

const rowHeight = 4.5;
const between = 2.6;
const gap = 1;

/** A rack's lengths with their pieces, row by row in columns of one width, no wider than `width` mm. */
export function rackText(rack: NonNullable<TrayMapSlot["rack"]>, width: number): TextBlock {
  const size = typeSizes.small;
  const first = Math.max(...rack.map((entry) => textWidth(entry.length, size, 700)));
  const second = Math.max(...rack.map((entry) => textWidth(entry.quantity, size)));
  const column = first + gap + second + between;
  const columns = Math.max(1, Math.floor((width + between) / column));
  const runs = rack.flatMap((entry, index): Run[] => {
    const x = (index % columns) * column;
    const y = (Math.floor(index / columns) + 0.76) * rowHeight;
    return [
      { x, y, text: entry.length, size: "small", weight: 700 },
      { x: x + first + gap, y, text: entry.quantity, size: "small", weight: 400 },
    ];
  });
  const used = Math.min(columns, rack.length);
  return { runs, width: used * column - between, height: Math.ceil(rack.length / columns) * rowHeight };
}
