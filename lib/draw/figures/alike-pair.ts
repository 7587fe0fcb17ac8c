import type { Pictures } from "../../model/figure.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { Interfaces } from "../../model/interfaces.ts";
import { drawFigure } from "../canvas.ts";
import { breakOff } from "../parts/break-off.ts";
import { instrumentData } from "../parts/instrument-data.ts";
import { instrumentShape } from "../parts/instrument-parts.ts";
import {
  drawShape,
  endViewsWidth,
  type Shape,
  type Stretch,
  shapeHalf,
  shapeLength,
} from "../parts/shape.ts";
import { edges, gaps, typeSizes } from "../tokens.ts";

const [edge, gap, times, names] = [edges.close, gaps.pair, 3, 4.6];
const letter = typeSizes.small;
const tip = 10;

/** What is worth enlarging: where either carries marks behind its working end, else the working end itself. */
function telling(shape: Shape, marked: boolean): Stretch {
  const to = shapeLength(shape);
  if (!marked || shape.focus === undefined) return { from: 0, to: Math.min(tip, to), at: 0 };
  const { from } = shape.focus;
  return { from, to: Math.min(to, from + tip), at: 0 };
}

const ringsOf = (one: Instrument): number => (one.kind === "drill" ? (one.bands ?? 0) : 0);

function shapesOf(pair: readonly Instrument[], interfaces: Interfaces) {
  const marked = new Set(pair.map(ringsOf)).size > 1;
  return pair.map((instrument) => {
    const shape = instrumentShape(instrument, interfaces);
    const close = { segments: shape.segments };
    return { instrument, shape, close, stretch: telling(shape, marked) };
  });
}

/** Two instruments that are taken for one another, one above the other: their working ends at true size, and beside each the feature that tells them apart, three times as large. */
export const alikePair: Pictures["alikePair"] = (id, pair, interfaces, width) => {
  const shown = shapesOf(pair, interfaces);
  const room = width - 3 * edge - gap - tip * times;
  const rows = shown.map(({ shape, close, stretch }) => {
    const stretches = breakOff(shape, room - endViewsWidth(shape));
    const high = Math.max(2 * shapeHalf(shape, stretches), 2 * shapeHalf(close, [stretch]) * times);
    return { stretches, high: high + 2.4 };
  });
  const about = {
    title: `${pair[0].name} and ${pair[1].name}`,
    description: `Working ends at true size, and the telling feature ${times} times as large.`,
    width,
    height: rows.reduce((sum, { high }) => sum + high + names, 2 * edge),
  };
  return drawFigure(id, about, (pen) => {
    let top = edge;
    for (const [index, { instrument, shape, close, stretch }] of shown.entries()) {
      const row = rows[index];
      if (row === undefined) continue;
      pen.words([edge, top + letter], instrument.name, { size: letter, weight: 600 });
      const axis = top + names + row.high / 2;
      const data = { ...instrumentData(instrument), scale: 1 };
      pen.group("instrument", { at: [edge, axis], data }, (inner) =>
        drawShape(inner, shape, row.stretches),
      );
      const left = width - edge - tip * times;
      pen.box([left - gaps.endView, top + names], tip * times + gaps.endView, row.high, {
        stroke: "hair",
      });
      const near = { at: [left, axis] as const, scale: times, data: { scale: times } };
      pen.group("enlarged", near, (inner) => drawShape(inner, close, [stretch]));
      top += row.high + names;
    }
    pen.words([width - edge, edge + letter], `× ${times}`, {
      size: letter,
      weight: 600,
      anchor: "end",
    });
  });
};
