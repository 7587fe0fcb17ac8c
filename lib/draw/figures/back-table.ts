import type { BackTable, Figure, Pictures } from "../../model/figure.ts";
import { drawFigure, type Pen } from "../canvas.ts";
import { arrow } from "../parts/arrow.ts";
import { instrumentShape } from "../parts/instrument-parts.ts";
import { shapeLength } from "../parts/shape.ts";
import { drawTablePlace, type Far } from "../parts/table/table-place.ts";
import { type TableBlock, tableRows } from "../parts/table/table-rows.ts";
import { edges, gaps, typeSizes } from "../tokens.ts";

const letter = typeSizes.small;
/** Millimetres: the table's edge and what stays clear of it, the longest instrument, the strips of the near and the far edge, what lies at the far edge. */
const [edge, clear, longest, rim, farRim] = [edges.wide, gaps.words, 54, 9, 12];
const [rack, rescue, apart] = [54, 32, gaps.block];
const leastWidth = 130;
/** Letters: an instrument's two words, a further line of words, and what is called out over them. */
const [words, furtherLine, heading] = [2.4, 1.1, 1.7];

const factsOf = ({ groups }: BackTable): NonNullable<Figure["facts"]> =>
  groups.map(({ called, items }) => [
    called,
    items
      .map(({ words: [noun, number], alike }) => `${noun} ${number}${alike ? ` (${alike})` : ""}`)
      .join(", "),
  ]);

/** The near edge with where the order begins, and at the far edge the screw rack and the removal kit. */
function drawEdges(pen: Pen, width: number, height: number, far: Far): void {
  const scrub = far > 0;
  pen.box([edge, edge], width - 2 * edge, height - 2 * edge, { stroke: "bold" });
  const label = scrub ? height - edge - 3 : edge + letter + 1.6;
  const from = scrub ? edge + 4 : width - edge - 4;
  pen.words([from, label], "first", {
    size: letter,
    weight: 600,
    anchor: scrub ? "start" : "end",
  });
  const start = from + far * 10;
  arrow(pen, [start, label - letter / 3], [start + far * 16, label - letter / 3]);
  pen.words([width / 2, label], "near edge: the scrub nurse stands here", {
    size: letter,
    anchor: "middle",
  });
  const back = scrub ? edge + clear : height - edge - farRim + clear;
  for (const [what, x, wide] of [
    ["screw rack", (width - rack) / 2, rack],
    ["removal kit", scrub ? width - edge - clear - rescue : edge + clear, rescue],
  ] as const) {
    pen.box([x, back], wide, farRim - 4, { dash: "hidden" });
    pen.words([x + wide / 2, back + farRim / 2 - 0.8], what, { size: letter, anchor: "middle" });
  }
}

/** The instruments of an order of work on the back table: laid side by side in the order they are asked for, grouped under the screw that is called, handles near, points away, at one scale; what looks like something else on it carries a chequered strip and what tells it apart, and lies at least two columns from it. */
export const backTable: Pictures["backTable"] = (id, table, interfaces, { width: most, side }) => {
  const all = table.groups.flatMap(({ items }) => items);
  const long = Math.max(
    1,
    ...all.map(({ instrument }) => shapeLength(instrumentShape(instrument, interfaces))),
  );
  const scale = longest / long;
  const fit = { edge: edge + clear, most: most - 2 * edge };
  const rows = tableRows(table.groups, interfaces, scale, fit);
  const filled = rows.map((blocks) => Math.max(...blocks.map(({ x, width }) => x + width)));
  const width = Math.max(
    rack + 2 * (rescue + apart),
    leastWidth,
    ...filled.map((row) => row + edge + clear),
  );
  const tells = rows
    .flat()
    .flatMap(({ places }) => places.map(({ tell }) => tell?.runs.length ?? 0));
  const beneath = (words + furtherLine * Math.max(0, ...tells)) * letter;
  const rowHeight = longest + beneath + heading * letter + 3;
  const height = rows.length * rowHeight + rim + farRim + 2 * edge;
  const scrub = side === "scrub side";
  const far: Far = scrub ? 1 : -1;
  const facts = factsOf(table);
  const about = {
    title: `${table.name}: the back table from the ${side}`,
    description: `In order of use ${scrub ? "from the left" : "from the right"}, handles near the scrub nurse, points away. ${facts.map(([called, items]) => `${called}: ${items}`).join("; ")}.`,
    width,
    height,
  };
  const left = (x: number, wide: number): number => (scrub ? x : width - x - wide);
  const drawBlock = (pen: Pen, block: TableBlock, near: number): void => {
    const x = left(block.x, block.width);
    const line = near - far * 2.6 + (scrub ? 0 : letter * 0.7);
    pen.words([x, line], block.called, { size: letter, weight: 600 });
    const rule = near - far * heading * letter;
    pen.line([x, rule], [x + block.width, rule], { stroke: "line" });
    for (const place of block.places) {
      const at = [left(block.x + place.x, place.width), rule - far * beneath] as const;
      const data = { called: block.called };
      pen.group("place", { at, data }, (inner) =>
        drawTablePlace(inner, place, interfaces, { scale, far }),
      );
    }
  };
  const figure = drawFigure(id, about, (pen) => {
    drawEdges(pen, width, height, far);
    for (const [index, blocks] of rows.entries()) {
      const near = scrub ? height - edge - rim - index * rowHeight : edge + rim + index * rowHeight;
      for (const block of blocks) drawBlock(pen, block, near);
    }
  });
  return { ...figure, facts };
};
