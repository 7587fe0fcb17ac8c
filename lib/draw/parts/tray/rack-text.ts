import type { TrayMapSlot } from "../../../model/figure.ts";
import { textWidth } from "../../text-widths.ts";
import { numberLineHeights, type TypeSize, typeSizes } from "../../tokens.ts";
import { type Run, stacked, type TextBlock } from "./slot-text.ts";

const between = 2.2;
const gap = 1;

const pieces = (quantity: string): string => (quantity.startsWith("×") ? quantity : `×${quantity}`);

type Rack = NonNullable<TrayMapSlot["rack"]>;

/** A rack's lengths with their pieces, row by row in columns of one width, no wider than `width` mm; the lengths set at `size`. */
export function rackText(rack: Rack, width: number, size: TypeSize = "small"): TextBlock {
  return inColumns(
    rack.map(({ length, quantity }) => ({ length, quantity: pieces(quantity) })),
    width,
    size,
  );
}

/** The number of pieces that most lengths of a rack have, in words. */
export const eachWords = (rack: Rack): string => `${pieces(commonest(rack))} each`;

/** The same in less room: the lengths alone, numbers of pieces other than the commonest beside their length. */
export function shortRackText(rack: Rack, width: number): TextBlock {
  const common = commonest(rack);
  const usual = rack
    .filter(({ quantity }) => quantity === common)
    .map(({ length }) => ({ length, quantity: "" }));
  const others = rack
    .filter(({ quantity }) => quantity !== common)
    .map(({ length, quantity }) => ({ length, quantity: pieces(quantity) }));
  return stacked([
    inColumns(usual, width),
    ...(others.length === 0 ? [] : [inColumns(others, width)]),
  ]);
}

function commonest(rack: Rack): string {
  const all = rack.map(({ quantity }) => quantity);
  const count = (one: string): number => all.filter((other) => other === one).length;
  return [...all].sort((a, b) => count(b) - count(a))[0] ?? "";
}

function inColumns(rack: Rack, width: number, size: TypeSize = "small"): TextBlock {
  const high = numberLineHeights[size];
  const first = Math.max(...rack.map((entry) => textWidth(entry.length, typeSizes[size], 700)));
  const second = Math.max(...rack.map((entry) => textWidth(entry.quantity, typeSizes.small)));
  const column = first + (second > 0 ? gap + second : 0) + between;
  const columns = Math.max(1, Math.floor((width + between) / column));
  const runs = rack.flatMap((entry, index): Run[] => {
    const x = (index % columns) * column;
    const y = (Math.floor(index / columns) + 0.76) * high;
    const length: Run = { x, y, text: entry.length, size, weight: 700 };
    return entry.quantity === ""
      ? [length]
      : [length, { x: x + first + gap, y, text: entry.quantity, size: "small", weight: 400 }];
  });
  const used = Math.min(columns, rack.length);
  return {
    runs,
    width: used * column - between,
    height: Math.ceil(rack.length / columns) * high,
  };
}
