import type { Pen, Spot } from "../../canvas.ts";
import type { Shown } from "../shape.ts";

/** Which ends of a segment get an edge; cut ends never do. */
export type Ends = "both" | "left" | "right" | "none";

/** Fills a body between its upper and lower edge (both left to right) and strokes the edges and the ends asked for. */
export function drawProfile(
  pen: Pen,
  upper: readonly Spot[],
  lower: readonly Spot[],
  shown: Shown,
  ends: Ends = "both",
  data: Readonly<Record<string, string | number>> = {},
): void {
  pen.polygon([...upper, ...lower.toReversed()], { fill: "metal", stroke: "none", data });
  pen.polyline(upper);
  pen.polyline(lower);
  const left = [upper[0], lower[0]];
  const right = [upper.at(-1), lower.at(-1)];
  if (!shown.cutLeft && (ends === "both" || ends === "left")) edge(pen, left);
  if (!shown.cutRight && (ends === "both" || ends === "right")) edge(pen, right);
}

function edge(pen: Pen, [from, to]: readonly (Spot | undefined)[]): void {
  if (from !== undefined && to !== undefined && from[1] !== to[1]) pen.line(from, to);
}
