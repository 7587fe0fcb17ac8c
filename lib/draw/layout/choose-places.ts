/** A question of choice: for each item, in order, the costs of its options, cheapest first and at most `most` of them, and
 * whether two options of two items exclude each other. */
export type Choice = {
  readonly costs: readonly (readonly number[])[];
  readonly most: number;
  readonly clash: (item: number, option: number, other: number, otherOption: number) => boolean;
  /** Whether any options of two items may clash at all. */
  readonly rivals: (item: number, other: number) => boolean;
};

/** A part of an answer: options chosen for the first items, what they cost, and every option they bar as bits, one run of
 * words an item. */
type Part = {
  readonly chosen: readonly number[];
  readonly spent: number;
  readonly barred: Uint32Array;
};

/** A part and the option that is to follow it, with the least that the whole answer can then cost. */
type Step = {
  readonly part: Part;
  readonly option: number;
  readonly spent: number;
  readonly least: number;
  readonly more: Uint32Array;
};

const beam = 48;
const tries = 10;

/** Which options of all other items every option bars. */
function barriers({ costs, most, clash, rivals }: Choice): Uint32Array[][] {
  const words = Math.ceil(most / 32);
  const bars = costs.map((mine) => mine.map(() => new Uint32Array(costs.length * words)));
  const bar = (mask: Uint32Array | undefined, item: number, option: number): void => {
    const word = item * words + (option >> 5);
    if (mask) mask[word] = (mask[word] ?? 0) | (1 << (option & 31));
  };
  for (let item = 0; item < costs.length; item++) {
    for (let other = item + 1; other < costs.length; other++) {
      if (!rivals(item, other)) continue;
      bars[item]?.forEach((mask, option) => {
        bars[other]?.forEach((otherMask, otherOption) => {
          if (!clash(item, option, other, otherOption)) return;
          bar(mask, other, otherOption);
          bar(otherMask, item, option);
        });
      });
    }
  }
  return bars;
}

const isBarred = (barred: Uint32Array, words: number, item: number, option: number): boolean =>
  (((barred[item * words + (option >> 5)] ?? 0) >>> (option & 31)) & 1) === 1;

/** The cheapest option of an item that neither of two sets bars; -1 when all are barred. */
function cheapest(barred: Uint32Array, more: Uint32Array, from: number, words: number): number {
  for (let word = 0; word < words; word++) {
    const free = ~((barred[from + word] ?? 0) | (more[from + word] ?? 0));
    if (free !== 0) return word * 32 + 31 - Math.clz32(free & -free);
  }
  return -1;
}

/** A number that tells sets of barred options apart. */
function mark(barred: Uint32Array, from: number): number {
  let [high, low] = [0x811c9dc5, 0x9e3779b9];
  for (let word = from; word < barred.length; word++) {
    high = Math.imul(high ^ (barred[word] ?? 0), 0x01000193);
    low = Math.imul(low ^ (high >>> 15) ^ (barred[word] ?? 0), 0x85ebca6b);
  }
  return (high >>> 0) * 0x100000 + (low >>> 12);
}

/** One option an item so that none clash and the sum of costs is small; undefined when the search finds no such choice.
 * Dynamic programming along the items: parts of an answer grow item by item, those that bar the same later options are one
 * (the cheapest stands for all), and the best few, by what they cost and the least the rest can still cost, go on. All ties
 * are settled by order: the same question has one answer. */
export function choosePlaces(choice: Choice): readonly number[] | undefined {
  const { costs, most } = choice;
  if (costs.some((mine) => mine.length === 0)) return undefined;
  const words = Math.ceil(most / 32);
  const bars = barriers(choice);
  const none = new Uint32Array(costs.length * words);
  let parts: Part[] = [{ chosen: [], spent: 0, barred: none }];
  for (let item = 0; item < costs.length; item++) {
    const steps: Step[] = [];
    for (const part of parts) {
      let tried = 0;
      for (let option = 0; option < (costs[item]?.length ?? 0) && tried < tries; option++) {
        if (isBarred(part.barred, words, item, option)) continue;
        tried++;
        const more = bars[item]?.[option] ?? none;
        const spent = part.spent + (costs[item]?.[option] ?? 0);
        const rest = leastRest(costs, item + 1, part.barred, more, words);
        if (rest !== undefined) steps.push({ part, option, spent, least: spent + rest, more });
      }
    }
    steps.sort((a, b) => a.least - b.least);
    parts = distinct(steps, (item + 1) * words);
  }
  return parts[0]?.chosen;
}

/** The least that the items from one on can still cost; undefined when one of them has no option left. */
function leastRest(
  costs: Choice["costs"],
  from: number,
  barred: Uint32Array,
  more: Uint32Array,
  words: number,
): number | undefined {
  let least = 0;
  for (let item = from; item < costs.length; item++) {
    const cost = costs[item]?.[cheapest(barred, more, item * words, words)];
    if (cost === undefined) return undefined;
    least += cost;
  }
  return least;
}

/** The parts that the first few steps lead to, none barring the same later options as one before it. */
function distinct(steps: readonly Step[], from: number): Part[] {
  const seen = new Set<number>();
  const kept: Part[] = [];
  for (const { part, option, spent, more } of steps) {
    const barred = part.barred.slice();
    for (let word = from; word < barred.length; word++)
      barred[word] = (barred[word] ?? 0) | (more[word] ?? 0);
    const key = mark(barred, from);
    if (seen.has(key)) continue;
    seen.add(key);
    kept.push({ chosen: [...part.chosen, option], spent, barred });
    if (kept.length === beam) break;
  }
  return kept;
}
