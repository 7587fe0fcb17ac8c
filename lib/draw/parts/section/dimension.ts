import type { Pen, Spot } from "../../canvas.ts";
import { measures } from "../../tokens.ts";

const { tip: head, half, inside: leastInside } = measures;

function tipAt(pen: Pen, [x, y]: Spot, [ux, uy]: Spot): void {
  const [nx, ny] = [x - ux * head, y - uy * head];
  pen.polygon(
    [
      [x, y],
      [nx - uy * half, ny + ux * half],
      [nx + uy * half, ny - ux * half],
    ],
    { fill: "ink", stroke: "none" },
  );
}

/** A measure between two places of a figure, paper mm: a line with filled tips, outside where there is little room; it tells its name and its size in mm of metal. */
export function dimension(
  pen: Pen,
  { name, size }: { readonly name: string; readonly size: number },
  from: Spot,
  to: Spot,
): void {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [ux, uy] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  const tight = long < leastInside;
  const beyond = tight ? measures.beyond : 0;
  pen.line(from, to, { stroke: "hair", data: { dimension: name, size } });
  if (tight) {
    pen.line([from[0] - ux * beyond, from[1] - uy * beyond], from, { stroke: "hair" });
    pen.line(to, [to[0] + ux * beyond, to[1] + uy * beyond], { stroke: "hair" });
  }
  const way = tight ? 1 : -1;
  tipAt(pen, from, [ux * way, uy * way]);
  tipAt(pen, to, [-ux * way, -uy * way]);
}
