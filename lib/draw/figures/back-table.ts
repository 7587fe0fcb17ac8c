import type { BackTable, Figure, Pictures } from "../../model/figure.ts";
import type { Interfaces } from "../../model/interfaces.ts";
import { drawFigure, type Pen } from "../canvas.ts";
import { arrow } from "../parts/arrow.ts";
import { inMm } from "../parts/instrument-part.ts";
import { instrumentShape } from "../parts/instrument-parts.ts";
import { drawShape, shapeHalf, shapeLength } from "../parts/shape.ts";
import { drawLookAlikeStrip, stripWidth } from "../parts/tray/look-alike-strip.ts";
import { textWidth } from "../text-widths.ts";

type Item = BackTable["groups"][number]["items"][number];
type Placed = { readonly item: Item; readonly x: number; readonly width: number };
type Block = {
  readonly called: string;
  readonly places: readonly Placed[];
  readonly width: number;
};
type Row = { readonly blocks: readonly (Block & { readonly x: number })[] };

const letter = 3.5;
const [edge, gap, apart, longest, rim] = [1, 2.4, 6, 54, 9];
const [farRim, rack, rescue] = [12, 54, 32];
const [words, heading] = [2.4 * letter, 1.7 * letter];
const rowHeight = longest + words + heading + 3;

/** An item's width on the table: its silhouette, its words, and an empty place where its neighbour looks alike. */
function placedBlock(
  group: BackTable["groups"][number],
  interfaces: Interfaces,
  scale: number,
): Block {
  let x = 0;
  const places = group.items.map((item): Placed => {
    const [noun, number] = item.words;
    const width = Math.max(
      2 * shapeHalf({ segments: instrumentShape(item.instrument, interfaces).segments }) * scale,
      textWidth(noun, letter),
      textWidth(number, letter, 700),
      item.alike ? 3 * stripWidth : 0,
    );
    const at = x;
    x += width + gap;
    return { item, x: at, width };
  });
  const called = textWidth(group.called, letter, 600);
  return { called: group.called, places, width: Math.max(x - gap, called) };
}

/** Groups in order of use, as many to a row as the width takes; the first row is the nearest. */
function rowsOf(blocks: readonly Block[], width: number): readonly Row[] {
  const rows: { blocks: (Block & { x: number })[]; x: number }[] = [];
  for (const block of blocks) {
    const last = rows.at(-1);
    if (last === undefined || last.x + block.width > width - 2 * edge)
      rows.push({ blocks: [{ ...block, x: edge + 2 }], x: edge + 2 + block.width + apart });
    else {
      last.blocks.push({ ...block, x: last.x });
      last.x += block.width + apart;
    }
  }
  return rows;
}

function drawItem(
  pen: Pen,
  { item, width }: Placed,
  interfaces: Interfaces,
  scale: number,
  far: 1 | -1,
): void {
  const shape = { segments: instrumentShape(item.instrument, interfaces).segments };
  const long = shapeLength(shape) * scale;
  const [tip, foot] = far > 0 ? [-long, 0] : [long, 0];
  pen.group(
    "tool",
    {
      at: [width / 2, tip],
      turn: far * 90,
      scale,
      data: {
        tool: item.instrument.id,
        length: inMm(item.instrument.kind === "plain-guide" ? 0 : shapeLength(shape) * 1000),
      },
    },
    (inner) => drawShape(inner, shape),
  );
  const [noun, number] = item.words;
  const base = foot + (far > 0 ? letter : -1.4 * letter);
  pen.words([width / 2, base], noun, { size: letter, anchor: "middle" });
  pen.words([width / 2, base + letter * 1.1], number, {
    size: letter,
    weight: 700,
    anchor: "middle",
  });
  if (!item.alike) return;
  pen.group("alike", { at: [-stripWidth - 0.4, far > 0 ? -8 : 0] }, (inner) =>
    drawLookAlikeStrip(inner, 8),
  );
}

/** The instruments of an order of work on the back table: laid side by side in the order they are asked for, grouped under the screw that is called, handles near, points away, at one scale; neighbours that look alike carry a chequered strip. */
export const backTable: Pictures["backTable"] = (id, table, interfaces, { width: most, side }) => {
  const all = table.groups.flatMap(({ items }) => items);
  const long = Math.max(
    1,
    ...all.map(({ instrument }) => shapeLength(instrumentShape(instrument, interfaces))),
  );
  const scale = longest / long;
  const rows = rowsOf(
    table.groups.map((group) => placedBlock(group, interfaces, scale)),
    most,
  );
  const filled = rows.map(({ blocks }) => Math.max(...blocks.map(({ x, width }) => x + width)));
  const width = Math.max(rack + 2 * (rescue + apart), 130, ...filled.map((row) => row + edge + 2));
  const height = rows.length * rowHeight + rim + farRim + 2 * edge;
  const scrub = side === "scrub side";
  const far = scrub ? 1 : -1;
  const facts: NonNullable<Figure["facts"]> = table.groups.map(({ called, items }) => [
    called,
    items
      .map(({ words: [noun, number], alike }) => `${noun} ${number}${alike ? ` (${alike})` : ""}`)
      .join(", "),
  ]);
  const about = {
    title: `${table.name}: the back table from the ${side}`,
    description: `In order of use ${scrub ? "from the left" : "from the right"}, handles near the scrub nurse, points away. ${facts.map(([called, items]) => `${called}: ${items}`).join("; ")}.`,
    width,
    height,
  };
  const figure = drawFigure(id, about, (pen) => {
    pen.box([edge, edge], width - 2 * edge, height - 2 * edge, { stroke: "bold" });
    const label = scrub ? height - edge - 3 : edge + letter + 1.6;
    const from = scrub ? edge + 4 : width - edge - 4;
    pen.words([from, label], "first", {
      size: letter,
      weight: 600,
      anchor: scrub ? "start" : "end",
    });
    const start = from + (scrub ? 10 : -10);
    arrow(pen, [start, label - letter / 3], [start + (scrub ? 16 : -16), label - letter / 3]);
    pen.words([width / 2, label], "near edge: the scrub nurse stands here", {
      size: letter,
      anchor: "middle",
    });
    const back = scrub ? edge + 2 : height - edge - farRim + 2;
    for (const [what, x, wide] of [
      ["screw rack", (width - rack) / 2, rack],
      ["removal kit", scrub ? width - edge - 2 - rescue : edge + 2, rescue],
    ] as const) {
      pen.box([x, back], wide, farRim - 4, { dash: "hidden" });
      pen.words([x + wide / 2, back + farRim / 2 - 0.8], what, { size: letter, anchor: "middle" });
    }
    for (const [index, { blocks }] of rows.entries()) {
      const near = scrub ? height - edge - rim - index * rowHeight : edge + rim + index * rowHeight;
      for (const block of blocks) {
        const line = near - far * 2.6;
        const left = (x: number, wide: number): number => (scrub ? x : width - x - wide);
        const x = left(block.x, block.width);
        pen.words([x, scrub ? line : line + letter * 0.7], block.called, {
          size: letter,
          weight: 600,
        });
        const rule = near - far * heading;
        pen.line([x, rule], [x + block.width, rule], { stroke: "line" });
        for (const place of block.places) {
          const at = left(block.x + place.x, place.width);
          pen.group("place", { at: [at, rule - far * words] }, (inner) =>
            drawItem(inner, place, interfaces, scale, far),
          );
        }
      }
    }
  });
  return { ...figure, facts };
};
