import type { Pen, Spot } from "../canvas.ts";
import type { Box } from "../layout/box.ts";
import type { OutlineRails } from "../layout/outline-rails.ts";

/** How thick the plate's edge is drawn where it may be bent, mm. */
const bar = 1.3;
const steps = 8;

/** A stretch of a plate that may be bent, between its edges on the figure: they are drawn thick there, and a broken line goes across. */
export function bendZone(
  pen: Pen,
  name: string,
  { x0: from, x1: to }: Pick<Box, "x0" | "x1">,
  edges: OutlineRails,
): void {
  const inset = Math.min(0.8, (to - from) / 6);
  const places = Array.from(
    { length: steps + 1 },
    (_, step) => from + inset + ((to - from - 2 * inset) * step) / steps,
  );
  for (const [side, inward] of [
    ["above", bar],
    ["below", -bar],
  ] as const) {
    const edge = places.map((x): Spot => [x, edges(side, x, x)]);
    const inner = edge.map(([x, y]): Spot => [x, y + inward]).reverse();
    pen.polygon([...edge, ...inner], {
      fill: "ink",
      stroke: "none",
      data: { bend: name },
    });
  }
  const x = (from + to) / 2;
  pen.line([x, edges("above", x, x)], [x, edges("below", x, x)], { dash: "centre" });
}
