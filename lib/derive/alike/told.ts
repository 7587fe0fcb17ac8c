import type { LookAlike } from "../../model/chain.ts";

/** A pair before it is weighed. */
export type Pair = Omit<LookAlike, "score" | "near">;

/** A thing seen on the metal: its value for one part, and the words that carry it ("3" in "3 rings"). */
export type Feature<T> = {
  readonly value: (part: T) => string | undefined;
  readonly words: (value: string) => string;
  /** Seen at once, with nothing counted, read or measured. */
  readonly atAGlance?: true;
};

/** The first feature in which two parts differ, told of the one and of the other ("2 rings" and "3 rings"); nothing told where there is none. */
export function told<T>(
  features: readonly Feature<T>[],
  a: T,
  b: T,
): Pick<Pair, "tells" | "atAGlance"> {
  for (const { value, words, atAGlance = false } of features) {
    const [one, other] = [value(a), value(b)];
    if (one !== undefined && other !== undefined && one !== other)
      return { tells: [words(one), words(other)], atAGlance };
  }
  return { atAGlance: false };
}
