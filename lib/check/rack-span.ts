import type { Screw } from "../model/screw.ts";

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
