import type { Defined } from "../../model/definition.ts";
import type { Figure } from "../../model/figure.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { Interfaces } from "../../model/interfaces.ts";
import { drawFigure, type Pen } from "../canvas.ts";
import { instrumentData } from "../parts/instrument-data.ts";
import { instrumentShape } from "../parts/instrument-parts.ts";
import { drawShape, endViewsWidth, type Shape, shapeHalf, shapeLength } from "../parts/shape.ts";
import { edges } from "../tokens.ts";

const edge = edges.line;
const nameRow = 5;
const namesFrom = 40;

/** The whole instrument, tip to the left, never larger than true size and at most `width` mm long; a guide's ends are named beneath. */
export function wholeInstrument(
  id: string,
  instrument: Defined<Instrument>,
  interfaces: Interfaces,
  width: number,
): Figure {
  const shape = instrumentShape(instrument, interfaces);
  const long = shapeLength(shape) + endViewsWidth(shape);
  const scale = Math.min(1, (width - 2 * edge) / long);
  const half = shapeHalf(shape) * scale + edge;
  const names = long * scale < namesFrom ? [] : (shape.endNames ?? []);
  const below = Math.max(half + (names.length > 0 ? nameRow : 0), armLength(shape) * scale + edge);
  const size =
    scale === 1 ? "Drawn at true size." : `Drawn at ${Math.round(scale * 100)} % of true size.`;
  const about = {
    title: `${instrument.name}, whole`,
    description:
      shape.endNames === undefined ? size : `${size} Ends: ${shape.endNames.join(", ")}.`,
    width: long * scale + 2 * edge,
    height: half + below,
  };
  return drawFigure(id, about, (pen) => {
    pen.group(
      "instrument",
      { at: [edge, half], scale, data: { ...instrumentData(instrument), scale } },
      (inner) => {
        drawArm(inner, shape);
        drawShape(inner, shape);
      },
    );
    pen.group("end-names", { at: [edge, half * 2 + nameRow - 1.3] }, (inner) =>
      drawNames(inner, names, long * scale, (shape.arm?.at ?? 0) * scale),
    );
  });
}

const armLength = ({ arm }: Shape): number =>
  (arm?.segments ?? []).reduce((sum, segment) => sum + segment.length, 0);

function drawArm(pen: Pen, { arm }: Shape): void {
  if (arm === undefined) return;
  pen.group("arm", { at: [arm.at, 0], turn: 90 }, (inner) =>
    drawShape(inner, { segments: arm.segments }),
  );
}

function drawNames(
  pen: Pen,
  [left, right, arm]: readonly string[],
  long: number,
  armAt: number,
): void {
  const lettering = { size: "small" } as const;
  if (left !== undefined) pen.words([0, 0], left, lettering);
  if (right !== undefined) pen.words([long, 0], right, { ...lettering, anchor: "end" });
  if (arm !== undefined) pen.words([armAt + 3.2, 0], arm, lettering);
}
