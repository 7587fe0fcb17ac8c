import type { Spot } from "../../canvas.ts";
import type { Segment } from "../shape.ts";
import { drawProfile, type Ends } from "./profile.ts";
import { type ThreadSizes, threadEdge, threadHalves } from "./thread-edge.ts";

/** A thread as a true zigzag: crests on the outer diameter, roots on the core, one tooth a pitch, the lower edge half a pitch on. `crests`: lines across, from crest to crest. */
export function thread(
  length: number,
  sizes: ThreadSizes & { readonly ends?: Ends; readonly crests?: boolean },
): Segment {
  const { major, core, pitch, taper = 0, ends = "none", crests = false } = sizes;
  const { crest } = threadHalves(length, sizes);
  return {
    length,
    half: (major + taper) / 2,
    draw(pen, shown) {
      const { from, to } = shown;
      const side = (sign: number, shift: number): Spot[] =>
        threadEdge(length, sizes, { from, to, shift }).map(([x, half]) => [x, sign * half]);
      const data = { edge: "thread", major, core, pitch };
      drawProfile(pen, side(-1, 0), side(1, pitch / 2), shown, ends, data);
      if (!crests) return;
      for (let x = pitch / 2; x + pitch / 2 < to - 0.02; x += pitch) {
        if (x < from) continue;
        pen.line([x, -crest(x) + 0.1], [x + pitch / 2, crest(x + pitch / 2) - 0.1], {
          stroke: "hair",
        });
      }
    },
  };
}
