import type { Defined } from "../../model/definition.ts";
import type { Figure } from "../../model/figure.ts";
import type { Interfaces } from "../../model/interfaces.ts";
import { type Um, wholeMm } from "../../model/measure.ts";
import type { Screw } from "../../model/screw.ts";
import { drawFigure } from "../canvas.ts";
import { screwData, screwShape } from "../parts/screw-shape.ts";
import { drawShape, shapeHalf, shapeLength } from "../parts/shape.ts";
import { edges } from "../tokens.ts";

const edge = edges.line;

/** A screw's side view at true size (1:1), tip to the left; `length` in micrometres, as the screw counts it. */
export function screw(id: string, one: Defined<Screw>, interfaces: Interfaces, length: Um): Figure {
  const shape = screwShape(one, interfaces, length);
  const half = shapeHalf(shape) + edge;
  const about = {
    title: `${one.name} × ${wholeMm(length)}`,
    description: "Side view at true size: 1 mm on paper is 1 mm of the screw.",
    width: shapeLength(shape) + 2 * edge,
    height: half * 2,
  };
  return drawFigure(id, about, (pen) => {
    pen.group(
      "screw",
      { at: [edge, half], data: { ...screwData(one, length), scale: 1 } },
      (inner) => drawShape(inner, shape),
    );
  });
}
