import type { Um } from "./measure.ts";
import type { Screw } from "./screw.ts";

/** Every length of a screw's rack once, shortest first, micrometres. */
export function rackLengths({ lengths }: Pick<Screw, "lengths">): readonly Um[] {
  const all = lengths.flatMap(({ from, to, step }) =>
    Array.from(
      { length: Math.max(0, Math.floor((to - from) / step) + 1) },
      (_, index) => from + index * step,
    ),
  );
  return [...new Set(all)].sort((a, b) => a - b);
}
