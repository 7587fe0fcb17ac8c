import type { Mutant } from "../model/mutation.ts";
import type { Leaf, Origin } from "./leaves.ts";

/** Words that stand for a side, an end, a use or a datum, each with what it is taken for. */
const flips: readonly (readonly string[])[] = [
  ["left", "right", "none"],
  ["proximal", "distal"],
  ["away-from-middle", "towards-middle"],
  ["start", "end"],
  ["head", "shaft"],
  ["pilot", "gliding"],
  ["centred", "offset", "free"],
  ["plate-hole", "seat", "bone", "sleeve"],
  ["screw-length", "bare-depth"],
];

/** A word of a few flipped to each of the others that its field takes. */
export function flipMutants(
  from: Origin,
  { path, value }: Leaf,
  choices: readonly string[],
): readonly Mutant[] {
  const words = flips.filter((known) => known.includes(String(value))).flat();
  return words
    .filter((word) => word !== value && choices.includes(word))
    .map((word) => ({
      ...from,
      kind: "flip",
      path,
      value: word,
      says: `${value} becomes ${word}`,
    }));
}
