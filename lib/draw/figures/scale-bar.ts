import type { Figure } from "../../model/figure.ts";
import { drawFigure } from "../canvas.ts";
import { edges } from "../tokens.ts";

const length = 50;
const edge = edges.bold;

/** A bar that measures exactly 50 mm when printed at 100 %, a tick every 10 mm, its words above. */
export function scaleBar(id: string): Figure {
  const words = "50 mm: print at 100 %";
  return drawFigure(
    id,
    {
      title: words,
      description: "A bar exactly 50 mm long, to check the printed size.",
      width: length + 2 * edge,
      height: 7.2,
    },
    (pen) => {
      pen.words([edge, 3], words, { size: "small", weight: 600 });
      pen.group("scale-bar", { at: [edge, 5.6], data: { part: "scale-bar", length } }, (inner) => {
        inner.line([0, 0], [length, 0], { stroke: "bold", data: { edge: "bar" } });
        for (let x = 0; x <= length; x += 10) {
          const out = x === 0 || x === length ? 1.3 : 0.8;
          inner.line([x, -out], [x, out], { stroke: "line", data: { edge: "tick" } });
        }
      });
    },
  );
}
