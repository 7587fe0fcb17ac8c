import type { TrayMapSlot } from "../../../model/figure.ts";
import { textWidth } from "../../text-widths.ts";
import { leading } from "../../tokens.ts";
import { type Run, stacked, type TextBlock } from "./slot-text.ts";

const between = 3;
const gap = 1;

const pieces = (quantity: string): string => (quantity.startsWith("×") ? quantity : `×${quantity}`);

type Rack = NonNullable<TrayMapSlot["rack"]>;

/** Font sizes of a rack's lengths and of their pieces, mm. */
type Sizes = { readonly length: number; readonly pieces: number };

/** A rack's lengths with their pieces, row by row in columns of one width, each length close to its own pieces, no wider than `width` mm. */
export function rackText(rack: Rack, width: number, sizes: Sizes): TextBlock {
  return inColumns(
    rack.map(({ length, quantity }) => ({ length, quantity: pieces(quantity) })),
    width,
    sizes,
  );
}

/** The number of pieces that most lengths of a rack have, in words. */
export const eachWords = (rack: Rack): string => `${pieces(commonest(rack))} each`;

/** The same in less room: the lengths alone, numbers of pieces other than the commonest beside their length. */
export function shortRackText(rack: Rack, width: number, sizes: Sizes): TextBlock {
  const common = commonest(rack);
  const usual = rack
    .filter(({ quantity }) => quantity === common)
    .map(({ length }) => ({ length, quantity: "" }));
  const others = rack
    .filter(({ quantity }) => quantity !== common)
    .map(({ length, quantity }) => ({ length, quantity: pieces(quantity) }));
  return stacked([
    inColumns(usual, width, sizes),
    ...(others.length === 0 ? [] : [inColumns(others, width, sizes)]),
  ]);
}

function commonest(rack: Rack): string {
  const all = rack.map(({ quantity }) => quantity);
  const count = (one: string): number => all.filter((other) => other === one).length;
  return [...all].sort((a, b) => count(b) - count(a))[0] ?? "";
}

function inColumns(rack: Rack, width: number, sizes: Sizes): TextBlock {
  const high = sizes.length * leading.numbers;
  const first = Math.max(...rack.map((entry) => textWidth(entry.length, sizes.length, 700)));
  const second = Math.max(...rack.map((entry) => textWidth(entry.quantity, sizes.pieces)));
  const column = first + (second > 0 ? gap + second : 0) + between;
  const columns = Math.max(1, Math.floor((width + between) / column));
  const runs = rack.flatMap((entry, index): Run[] => {
    const x = (index % columns) * column;
    const own = first - textWidth(entry.length, sizes.length, 700);
    const y = (Math.floor(index / columns) + 0.76) * high;
    const length: Run = { x: x + own, y, text: entry.length, size: sizes.length, weight: 700 };
    return entry.quantity === ""
      ? [length]
      : [length, { x: x + first + gap, y, text: entry.quantity, size: sizes.pieces, weight: 400 }];
  });
  const used = Math.min(columns, rack.length);
  return {
    runs,
    width: used * column - between,
    height: Math.ceil(rack.length / columns) * high,
  };
}
