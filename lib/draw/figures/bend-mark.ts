import type { Figure } from "../../model/figure.ts";
import { drawFigure, type Pen } from "../canvas.ts";
import { bendZone } from "../parts/bend-zone.ts";

const [width, height] = [16, 8.4];
const [left, right, top, bottom] = [2, 14, 1.4, 7];

/** The mark of a stretch of plate that may be bent: a piece of plate, cut at both ends, with the mark between them; the pen's zero at its
 * corner, mm. */
export function drawBendMark(pen: Pen): void {
  const [inner, outer] = [left + 2.5, right - 2.5];
  for (const y of [top, bottom]) pen.line([left, y], [right, y], { stroke: "bold" });
  bendZone(pen, "mark", { x0: inner, x1: outer }, (side) => (side === "above" ? top : bottom));
}

/** The mark of a bend zone for legends. */
export function bendMark(id: string): Figure {
  const about = {
    title: "bend zone",
    description: "Symbol of a bend zone: both edges of the plate thick, a broken line across.",
    width,
    height,
  };
  return drawFigure(id, about, (pen) => pen.group("bend", {}, drawBendMark));
}
