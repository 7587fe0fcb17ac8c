import type { Defined } from "../../model/definition.ts";
import type { Figure } from "../../model/figure.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { Interfaces } from "../../model/interfaces.ts";
import { drawFigure } from "../canvas.ts";
import { instrumentData } from "../parts/instrument-data.ts";
import { instrumentShape } from "../parts/instrument-parts.ts";
import { drawShape, endViewsWidth, shapeHalf, shapeLength } from "../parts/shape.ts";

const edge = 0.4;

/** The whole instrument, tip to the left, never larger than true size and at most `width` mm long. */
export function wholeInstrument(id: string, instrument: Defined<Instrument>, interfaces: Interfaces, width: number): Figure {
  const shape = instrumentShape(instrument, interfaces);
  const long = shapeLength(shape) + endViewsWidth(shape);
  const scale = Math.min(1, (width - 2 * edge) / long);
  const half = shapeHalf(shape) * scale + edge;
  const about = {
    title: `${instrument.name}, whole`,
    description: scale === 1 ? "Drawn at true size." : `Drawn at ${Math.round(scale * 100)} % of true size.`,
    width: long * scale + 2 * edge,
    height: half * 2,
  };
  return drawFigure(id, about, (pen) => {
    pen.group("instrument", { at: [edge, half], scale, data: { ...instrumentData(instrument), scale } }, (inner) => {
      drawShape(inner, shape);
    });
  });
}
