import type { Screw } from "../model/screw.ts";

/** Every length of a screw's rack once, in order, micrometres. */
export function rackLengths({ lengths }: Screw): readonly number[] {
  const all = lengths.flatMap(({ from, to, step }) =>
    Array.from(
      { length: Math.max(0, Math.floor((to - from) / step) + 1) },
      (_, index) => from + index * step,
    ),
  );
  return [...new Set(all)].sort((a, b) => a - b);
}

/** The shortest and the longest screw of the rack, micrometres. */
export function rackSpan({ lengths }: Pick<Screw, "lengths">): {
  readonly shortest: number;
  readonly longest: number;
} {
  return {
    shortest: Math.min(...lengths.map(({ from }) => from)),
    longest: Math.max(...lengths.map(({ to }) => to)),
  };
}
