/** For each option of each item the options of all items that it bars, as one long run of bits: `words` 32-bit words an item
 * make a set, and the set of an option starts at `(item * most + option) * width`. */
export type Bars = {
  readonly most: number;
  readonly words: number;
  readonly width: number;
  readonly bits: Uint32Array;
};

/** Which options exclude which. `most`: how many options an item may have. `rivals`: whether two items' options can exclude
 * one another at all. */
export function barsBetween<T>(
  options: readonly (readonly T[])[],
  most: number,
  rivals: (item: number, other: number) => boolean,
  clash: (a: T, b: T) => boolean,
): Bars {
  const words = Math.ceil(most / 32);
  const width = options.length * words;
  const bits = new Uint32Array(options.length * most * width);
  for (let item = 0; item < options.length; item++) {
    for (let other = item + 1; other < options.length; other++) {
      if (!rivals(item, other)) continue;
      const theirs = options[other] ?? [];
      let set = item * most * width;
      let option = 0;
      for (const a of options[item] ?? []) {
        let otherSet = other * most * width;
        let otherOption = 0;
        for (const b of theirs) {
          if (clash(a, b)) {
            put(bits, set + other * words, otherOption);
            put(bits, otherSet + item * words, option);
          }
          otherSet += width;
          otherOption++;
        }
        set += width;
        option++;
      }
    }
  }
  return { most, words, width, bits };
}

function put(bits: Uint32Array, from: number, option: number): void {
  const at = from + (option >> 5);
  bits[at] = (bits[at] ?? 0) | (1 << (option & 31));
}

/** Whether an option is in the run of bits that starts at `from`. */
export function isIn(bits: Uint32Array, from: number, option: number): boolean {
  return (((bits[from + (option >> 5)] ?? 0) >>> (option & 31)) & 1) === 1;
}

/** A number that tells two runs of bits apart. */
export function markOf(bits: Uint32Array, from: number, to: number): number {
  let [high, low] = [0x811c9dc5, 0x9e3779b9];
  for (let at = from; at < to; at++) {
    const word = bits[at] ?? 0;
    high = Math.imul(high ^ word, 0x01000193);
    low = Math.imul(low ^ (high >>> 15) ^ word, 0x85ebca6b);
  }
  return (high >>> 0) * 0x100000 + (low >>> 12);
}
