import type { Figure } from "../../model/figure.ts";
import type { OpeningKind } from "../../model/zone.ts";
import { drawFigure, type Pen } from "../canvas.ts";
import { holeParts } from "../parts/hole-parts.ts";

const width = 16;
const height = 8.4;
const pointerRoom = 3.4;

/** The symbol of a kind of hole, the same on maps, in rows and in legends; `use` points at one part of a combined opening. */
export function hole(id: string, kind: OpeningKind, use?: "threaded" | "plain"): Figure {
  const part = holeParts[kind];
  const [sizes] = part.samples;
  if (sizes === undefined) throw new Error(`The hole part "${kind}" has no sample`);
  const pointed = kind === "combined" ? use : undefined;
  const top = pointed === undefined ? 0 : pointerRoom;
  const about = {
    title: pointed === undefined ? part.label : `combined opening, ${pointed} part`,
    description:
      pointed === undefined
        ? `Symbol of a ${part.label} hole.`
        : `An arrow points at the ${pointed} part of the combined opening.`,
    width,
    height: height + top,
  };
  return drawFigure(id, about, (pen) => {
    pen.group(
      "hole",
      {
        at: [width / 2, top + height / 2],
        data: { hole: kind, ...(pointed === undefined ? {} : { use: pointed }) },
      },
      (inner) => {
        part.draw(inner, sizes);
        if (pointed !== undefined)
          drawPointer(inner, ((sizes.beside?.apart ?? 0) / 2) * (pointed === "threaded" ? -1 : 1));
      },
    );
  });
}

function drawPointer(pen: Pen, x: number): void {
  const tip = -height / 2 + 0.3;
  pen.line([x, tip - pointerRoom + 0.3], [x, tip - 1.4], { stroke: "heavy" });
  pen.polygon(
    [
      [x, tip],
      [x - 1.3, tip - 1.9],
      [x + 1.3, tip - 1.9],
    ],
    { fill: "ink", stroke: "none", data: { edge: "pointer" } },
  );
}
