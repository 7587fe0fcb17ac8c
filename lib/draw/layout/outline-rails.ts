import type { Spot } from "./box.ts";

/** A side of the plate on the figure. */
export type RailSide = "above" | "below" | "left" | "right";

/** How far the outline goes towards a side, over a stretch of the other axis (mm); undefined where there is no plate. */
export type OutlineRails = (side: RailSide, from: number, to: number) => number | undefined;

const column = 0.5;

type Profile = { readonly least: number[]; readonly most: number[] };

/** The least and most of one axis in every half-millimetre column of the other. */
function profile(outline: readonly Spot[], axis: 0 | 1): Profile {
  const other = axis === 0 ? 1 : 0;
  const found: Profile = { least: [], most: [] };
  outline.forEach((a, at) => {
    const b = outline[(at + 1) % outline.length] ?? a;
    const [low, high] = a[axis] <= b[axis] ? [a, b] : [b, a];
    const slope =
      high[axis] === low[axis] ? 0 : (high[other] - low[other]) / (high[axis] - low[axis]);
    const first = Math.floor(low[axis] / column);
    const last = Math.floor(high[axis] / column);
    for (let index = first; index <= last; index++) {
      const from = Math.max(low[axis], index * column);
      const to = Math.min(high[axis], (index + 1) * column);
      const ends =
        slope === 0
          ? [low[other], high[other]]
          : [low[other] + slope * (from - low[axis]), low[other] + slope * (to - low[axis])];
      found.least[index] = Math.min(found.least[index] ?? Infinity, ...ends);
      found.most[index] = Math.max(found.most[index] ?? -Infinity, ...ends);
    }
  });
  return found;
}

/** The rails along which labels stand around a closed outline (figure millimetres). */
export function outlineRails(outline: readonly Spot[]): OutlineRails {
  const [across, down] = [profile(outline, 0), profile(outline, 1)];
  return (side, from, to) => {
    const { least, most } = side === "above" || side === "below" ? across : down;
    const outward = side === "below" || side === "right";
    const edges = outward ? most : least;
    let edge: number | undefined;
    for (let index = Math.floor(from / column); index <= Math.floor(to / column); index++) {
      const here = edges[index];
      if (here === undefined) continue;
      if (edge === undefined || (outward ? here > edge : here < edge)) edge = here;
    }
    return edge;
  };
}
