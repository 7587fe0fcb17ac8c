import type { Figure } from "../model/figure.ts";
import type { PlateMapView } from "../model/sheet.ts";
import type { SheetFrame, WarningLine } from "../model/sheet-frame.ts";
import { typeFloors } from "../model/type-sizes.ts";
import type { Composing } from "./composing.ts";
import { notesHeight } from "./notes-height.ts";
import { linesOf } from "./printed-lines.ts";
import { boxLines, warningBox } from "./warning-box.ts";

type Words = Pick<PlateMapView, "bands" | "everyScrew" | "legend" | "orientation">;

/** What of a page goes to what: the table of holes where it is printed, the box of traps, and the millimetres of height for the map. */
export type MapShare = Pick<PlateMapView, "table" | "traps" | "side"> & { readonly height: number };

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

/** What stands at the foot of the page: the lines of the box, the rows of the table, and the plate from the side. */
type Beneath = {
  readonly boxLines: number;
  readonly rows: number;
  readonly side?: Figure | undefined;
};

/** Millimetres of height that the map may take: what the heading, the bands, the box, the table and the foot leave of the page. */
function mapHeight(
  composing: Composing,
  words: Words,
  { boxLines: warned, rows, side }: Beneath,
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
    Math.max(warned * body * 1.2 + 3, rows > 0 ? (1 + rows) * note * 1.12 : 0, side?.height ?? 0) +
    notesHeight(composing, "plate-map", frame);
  return Math.max(28, page.height - 2 * page.margin - taken);
}

/** Millimetres: between the box and the table of holes, after each of its columns, and what frames the words of the box. */
const beneath = { gap: 4, column: 1.5, frame: 5 } as const;
const heads = { label: "hole", kind: "kind", takes: "takes screw" } as const;

/** The width that a table of holes takes with the gap before it, mm; 0 for none. */
function tableWidth({ pictures }: Composing, table: PlateMapView["table"], note: number): number {
  if (table.length === 0) return 0;
  const column = (of: "label" | "kind" | "takes"): number =>
    Math.max(
      pictures.textWidth(heads[of], note, 600),
      ...table.map((line) => pictures.textWidth(line[of], note, of === "label" ? 700 : 400)),
    ) + beneath.column;
  return beneath.gap + column("label") + column("kind") + column("takes");
}

/** What a page may show beneath its bands. */
type Offered = {
  readonly table: PlateMapView["table"];
  readonly traps: readonly WarningLine[];
  /** Draws a plate that its side view explains, so many millimetres wide. */
  readonly fromSide?: (width: number) => Figure;
};

/** The width of a plate from the side beside the box, mm. */
const sideWidth = 100;

/** The ways to share out a page, the fullest first, each with the box of traps that it has room for: with the table of holes, with the
 * table and a lower box, with the plate from the side in the table's place, and with neither and a higher map. */
export function mapShares(
  composing: Composing,
  words: Words,
  { table, traps, fromSide }: Offered,
  frame: SheetFrame,
): readonly [MapShare, ...MapShare[]] {
  const { body, note } = typeFloors("plate-map", frame.format);
  const share = (listed: PlateMapView["table"], most: number, side?: Figure): MapShare => {
    const whole = frame.format.width - 2 * frame.format.margin;
    const beside = side ? beneath.gap + side.width : tableWidth(composing, listed, note);
    const column = { width: whole - beside - beneath.frame, size: body };
    const room = { ...column, lines: most };
    const box = warningBox(composing.pictures, "Goes in, and is wrong.", traps, room);
    const lines = box.lines.length === 0 ? 0 : boxLines(composing.pictures, box.lines, column);
    const under = { boxLines: lines, rows: listed.length, side };
    const height = mapHeight(composing, words, under, frame);
    return { table: listed, traps: box, height, ...(side && { side }) };
  };
  const plain = share([], 3);
  if (table.length === 0 || frame.format.height < shortPaper) return [plain];
  const most = Math.max(4, Math.floor(((1 + table.length) * 2.9) / 4.1));
  const sided = fromSide ? [share([], 4, fromSide(sideWidth))] : [];
  return [share(table, most), share(table, 3), ...sided, plain];
}

/** The first way in which the map takes no more height than it is given and which shows what is wanted, else the first that fits;
 * where none does, the last one, for the page's check to find. */
export function firstThatFits<S extends MapShare & { readonly map: Figure }>(
  ways: readonly (() => S)[],
  wanted: (way: S) => boolean = () => true,
): S {
  let fitting: S | undefined;
  let last: S | undefined;
  for (const way of ways) {
    last = way();
    if (last.map.height > last.height + 0.01) continue;
    if (wanted(last)) return last;
    fitting ??= last;
  }
  const found = fitting ?? last;
  if (found === undefined) throw new Error("A page has at least one way to share it out");
  return found;
}
