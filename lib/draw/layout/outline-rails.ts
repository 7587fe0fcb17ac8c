import type { Spot } from "./box.ts";

/** A side of the plate on the figure. */
export type RailSide = "above" | "below" | "left" | "right";

/** How far the outline goes towards a side, over a stretch of the other axis (mm); beyond the plate as far as at its end. */
export type OutlineRails = (side: RailSide, from: number, to: number) => number;

const column = 0.5;

/** The least and most of one axis in every half-millimetre column of the other, from the column `first` on. */
type Profile = {
  readonly first: number;
  readonly least: Float64Array;
  readonly most: Float64Array;
};

function profile(runs: readonly (readonly Spot[])[], axis: 0 | 1): Profile {
  const other = axis === 0 ? 1 : 0;
  const columns = runs.flat().map((spot) => Math.floor(spot[axis] / column));
  const first = Math.min(...columns);
  const count = Math.max(...columns) - first + 1;
  const least = new Float64Array(count).fill(Infinity);
  const most = new Float64Array(count).fill(-Infinity);
  const widen = (a: Spot, b: Spot): void => {
    const [low, high] = a[axis] <= b[axis] ? [a, b] : [b, a];
    const run = high[axis] - low[axis];
    const slope = run === 0 ? 0 : (high[other] - low[other]) / run;
    for (let index = Math.floor(low[axis] / column); index * column <= high[axis]; index++) {
      const from = low[other] + slope * Math.max(0, index * column - low[axis]);
      const end =
        run === 0
          ? high[other]
          : low[other] + slope * Math.min(run, (index + 1) * column - low[axis]);
      least[index - first] = Math.min(least[index - first] ?? from, from, end);
      most[index - first] = Math.max(most[index - first] ?? from, from, end);
    }
  };
  for (const run of runs)
    for (const [at, a] of run.entries()) widen(a, run[(at + 1) % run.length] ?? a);
  return { first, least, most };
}

/** The rails along which labels stand around closed runs of points (figure millimetres). */
export function outlineRails(runs: readonly (readonly Spot[])[]): OutlineRails {
  const [across, down] = [profile(runs, 0), profile(runs, 1)];
  return (side, from, to) => {
    const { first, least, most } = side === "above" || side === "below" ? across : down;
    const outward = side === "below" || side === "right";
    const edges = outward ? most : least;
    const last = columnOf(to, first, edges.length);
    let edge = edges[columnOf(from, first, edges.length)] ?? 0;
    for (let index = columnOf(from, first, edges.length) + 1; index <= last; index++) {
      const here = edges[index] ?? edge;
      if (outward ? here > edge : here < edge) edge = here;
    }
    return edge;
  };
}

/** The column that a place lies in, the first or last one beyond the ends. */
function columnOf(place: number, first: number, count: number): number {
  return Math.min(Math.max(Math.floor(place / column) - first, 0), count - 1);
}
