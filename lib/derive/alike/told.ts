import type { LookAlike } from "../../model/chain.ts";

/** A pair before it is weighed. */
export type Pair = Omit<LookAlike, "score" | "near">;

/** A thing seen on the metal: its value for one part, and the words that carry it ("3" in "3 rings on the shank"). */
export type Feature<T> = {
  readonly value: (part: T) => string | undefined;
  readonly words: (value: string) => string;
};

function tellApart<T>(features: readonly Feature<T>[], a: T, b: T): string {
  for (const { value, words } of features) {
    const [one, other] = [value(a), value(b)];
    if (one !== undefined && other !== undefined && one !== other)
      return `${words(one)}, not ${other}`;
  }
  return "nothing etched tells them apart";
}

/** The first feature in which two parts differ, told of the one and of the other ("2 rings on the shank, not 3" and "3 rings …, not 2"). */
export function told<T>(
  features: readonly Feature<T>[],
  a: T,
  b: T,
): Pick<Pair, "tell" | "tellOfB"> {
  return { tell: tellApart(features, a, b), tellOfB: tellApart(features, b, a) };
}
