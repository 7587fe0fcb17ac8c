import type { Spot } from "../../canvas.ts";
import type { Segment } from "../shape.ts";
import { drawProfile, type Ends } from "./profile.ts";

/** A thread's sizes, mm. `lead`: stretch at the left over which it grows to full size from `tip` (default the core). `taper`: growth of the diameters along the whole length. */
export type ThreadSizes = {
  readonly major: number;
  readonly core: number;
  readonly pitch: number;
  readonly lead?: number;
  readonly tip?: number;
  readonly taper?: number;
  readonly ends?: Ends;
  readonly crests?: boolean;
};

/** A thread as a true zigzag: crests on the outer diameter, roots on the core, one tooth a pitch, the lower edge half a pitch on. */
export function thread(length: number, sizes: ThreadSizes): Segment {
  const {
    major,
    core,
    pitch,
    lead = 0,
    tip = core,
    taper = 0,
    ends = "none",
    crests = false,
  } = sizes;
  const grown = (x: number): number => (lead > 0 ? Math.min(1, x / lead) : 1);
  const wide = (x: number): number => taper * (x / length);
  const root = (x: number): number => (tip + (core - tip) * grown(x) + wide(x)) / 2;
  const crest = (x: number): number => root(x) + ((major - core) / 2) * grown(x);
  const side = (sign: number, shift: number, from: number, to: number): Spot[] => {
    const spots: Spot[] = [[from, sign * root(from)]];
    for (
      let index = Math.ceil((from - shift) / (pitch / 2));
      index * (pitch / 2) + shift < to - 0.02;
      index += 1
    ) {
      const x = index * (pitch / 2) + shift;
      if (x > from + 0.02) spots.push([x, sign * (index % 2 === 0 ? root(x) : crest(x))]);
    }
    return [...spots, [to, sign * root(to)]];
  };
  return {
    length,
    half: (major + taper) / 2,
    draw(pen, shown) {
      const { from, to } = shown;
      const data = { edge: "thread", major, core, pitch };
      drawProfile(pen, side(-1, 0, from, to), side(1, pitch / 2, from, to), shown, ends, data);
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
