import type { Figure } from "../model/figure.ts";
import type { PlateMapView } from "../model/sheet.ts";
import type { SheetFrame } from "../model/sheet-frame.ts";
import { typeFloors } from "../model/type-sizes.ts";
import type { Composing } from "./composing.ts";
import { notesHeight } from "./notes-height.ts";
import { linesOf } from "./printed-lines.ts";

type Words = Pick<PlateMapView, "bands" | "everyScrew" | "legend" | "orientation">;

/** What of a page goes to what: whether the table of holes is printed, the lines of the box, and the millimetres of height for the map. */
export type MapShare = {
  readonly listed: boolean;
  readonly boxLines: number;
  readonly height: number;
};

/** Millimetres that heading, foot and gaps take; on short paper the gaps are narrower. */
const around = { short: 21.7, high: 23 } as const;

/** Paper lower than this, mm, has no table of holes: bands and legend say the same. */
const shortPaper = 145;

/** Millimetres under the map: height of a sign, between a sign and its words, between two entries, between two rows of them, between legend and orientation; the most of the width that the legend takes. */
const underMap = { sign: 5, words: 1.4, entries: 5, rows: 0.5, columns: 6, legend: 0.6 } as const;

/** Millimetres of height that legend and orientation take side by side under a map of this width. */
function underHeight(
  { pictures }: Composing,
  { legend, orientation }: Words,
  { width, size }: { readonly width: number; readonly size: number },
): number {
  const most = width * underMap.legend;
  let rows = 1;
  let taken = 0;
  for (const { symbol, words } of legend) {
    const sign = (symbol.width * underMap.sign) / symbol.height;
    const wide = sign + underMap.words + pictures.textWidth(words, size, 400);
    if (taken > 0 && taken + underMap.entries + wide > most) {
      rows += 1;
      taken = wide;
    } else taken += (taken > 0 ? underMap.entries : 0) + wide;
  }
  const beside = width - (rows > 1 ? most : taken) - underMap.columns;
  const lines = linesOf(pictures, [{ text: orientation.join(" ") }], { width: beside, size });
  return Math.max(rows * (underMap.sign + underMap.rows), lines * size * 1.1);
}

/** Millimetres of height that the map may take: what the heading, the bands, the box, the table and the foot leave of the page. */
function mapHeight(
  composing: Composing,
  words: Words,
  { boxLines, rows }: { readonly boxLines: number; readonly rows: number },
  frame: SheetFrame,
): number {
  const { bands, everyScrew = "" } = words;
  const page = frame.format;
  const { body, note } = typeFloors("plate-map", page);
  const column = { width: page.width - 53, size: body };
  const lines = bands
    .flatMap(({ pairings }) => pairings)
    .reduce(
      (sum, { zone, called, hand }) => {
        const said = [{ text: `${zone} ${called}`, weight: 700 as const }, { text: hand }];
        return sum + linesOf(composing.pictures, said, column);
      },
      everyScrew === "" ? 0 : 1,
    );
  const taken =
    (page.height < shortPaper ? around.short : around.high) +
    underHeight(composing, words, { width: page.width - 2 * page.margin, size: note }) +
    lines * body * 1.16 +
    bands.length * 1.4 +
    Math.max(boxLines * body * 1.2 + 3, rows > 0 ? (1 + rows) * note * 1.12 : 0) +
    notesHeight(composing, "plate-map", frame);
  return Math.max(28, page.height - 2 * page.margin - taken);
}

/** The ways to share out a page, the fullest first: with the table of so many rows, then without it and with a higher map. */
export function mapShares(
  composing: Composing,
  words: Words,
  rows: number,
  frame: SheetFrame,
): readonly [MapShare, ...MapShare[]] {
  const share = (listed: boolean, boxLines: number): MapShare => {
    const height = mapHeight(composing, words, { boxLines, rows: listed ? rows : 0 }, frame);
    return { listed, boxLines, height };
  };
  const plain = share(false, 3);
  if (rows === 0 || frame.format.height < shortPaper) return [plain];
  return [share(true, Math.max(4, Math.floor(((1 + rows) * 2.9) / 4.1))), plain];
}

/** The first way in which the map takes no more height than it is given; where none does, the last one, for the page's check to find. */
export function firstThatFits<S extends MapShare & { readonly map: Figure }>(
  ways: readonly (() => S)[],
): S {
  let last: S | undefined;
  for (const way of ways) {
    last = way();
    if (last.map.height <= last.height + 0.01) return last;
  }
  if (last === undefined) throw new Error("A page has at least one way to share it out");
  return last;
}
