import type { Defined } from "../../model/definition.ts";
import type { Figure } from "../../model/figure.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { Interfaces } from "../../model/interfaces.ts";
import { drawFigure } from "../canvas.ts";
import { breakOff, breakRoom } from "../parts/break-off.ts";
import { instrumentData } from "../parts/instrument-data.ts";
import { instrumentShape } from "../parts/instrument-parts.ts";
import { drawShape, endViewsWidth, shapeHalf, shapeLength } from "../parts/shape.ts";
import { edges, gaps } from "../tokens.ts";

const edge = edges.line;

/** The working end of an instrument at true size (1:1), tip to the left, broken off to be at most `width` mm long. */
export function workingEnd(
  id: string,
  instrument: Defined<Instrument>,
  interfaces: Interfaces,
  width: number,
  end?: string,
): Figure {
  const shape = instrumentShape(instrument, interfaces, end);
  const stretches = breakOff(shape, width - 2 * edge - endViewsWidth(shape));
  const last = stretches.at(-1);
  const drawn = endViewsWidth(shape) + (last === undefined ? 0 : last.at + last.to - last.from);
  const cut = stretches.length > 1 || (last !== undefined && last.to < shapeLength(shape));
  const half = shapeHalf(shape, stretches) + (cut ? gaps.shortened : edge);
  const about = {
    title: `${instrument.name}, ${end ?? "working"} end`,
    description: `${end === undefined ? "" : `The ${end} end. `}Drawn at true size: 1 mm on paper is 1 mm of the instrument${cut ? "; the body is broken off" : ""}.`,
    width: drawn + 2 * edge + (cut ? breakRoom : 0),
    height: half * 2,
  };
  return drawFigure(id, about, (pen) => {
    pen.group(
      "instrument",
      { at: [edge, half], data: { ...instrumentData(instrument), scale: 1 } },
      (inner) => {
        drawShape(inner, shape, stretches);
      },
    );
  });
}
