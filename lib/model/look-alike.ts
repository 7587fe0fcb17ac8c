import type { LookAlike } from "./chain.ts";

type Sides = Pick<LookAlike, "a" | "b">;

/** What a part is taken for by this pair; undefined where it is neither. */
export function partner({ a, b }: Sides, id: string): string | undefined {
  return a === id ? b : b === id ? a : undefined;
}

/** What is seen on one part of a pair that the other has not. */
export function seenOn({ b, tells }: Pick<LookAlike, "b" | "tells">, id: string): string {
  return tells?.[id === b ? 1 : 0] ?? "nothing etched tells them apart";
}
