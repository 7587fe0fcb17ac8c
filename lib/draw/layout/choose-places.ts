import { type Bars, isIn, markOf } from "./bars.ts";

/** The costs of each item's options, cheapest first. */
export type Costs = readonly (readonly number[])[];

/** A part of an answer: the option of its last item, the part before it, what it costs, and where the set of all that it bars
 * starts among the sets of its round. */
type Part = {
  readonly option: number;
  readonly before: Part | undefined;
  readonly spent: number;
  readonly from: number;
};

/** A part and the option that is to follow it: what that bars, and the least that the whole answer can then cost. */
type Step = {
  readonly part: Part;
  readonly option: number;
  readonly spent: number;
  readonly least: number;
  readonly more: number;
};

const beam = 24;
const tries = 10;

/** One option an item so that none bar each other and the sum of costs is small; undefined when the search finds no such
 * choice. Dynamic programming along the items: parts of an answer grow item by item, those that bar the same later options are
 * one (the cheapest stands for all), and the best few, by what they cost and the least the rest can still cost, go on. All
 * ties are settled by order: the same question has one answer. */
export function choosePlaces(costs: Costs, bars: Bars): readonly number[] | undefined {
  const { most, words, width } = bars;
  let [sets, spare] = [new Uint32Array(beam * width), new Uint32Array(beam * width)];
  let parts: Part[] = [{ option: -1, before: undefined, spent: 0, from: 0 }];
  for (const [item, mine] of costs.entries()) {
    const steps: Step[] = [];
    for (const part of parts) {
      let tried = 0;
      for (let option = 0; option < mine.length && tried < tries; option++) {
        if (isIn(sets, part.from + item * words, option)) continue;
        tried++;
        const more = (item * most + option) * width;
        const spent = part.spent + (mine[option] ?? 0);
        const rest = leastRest(costs, item + 1, sets, part.from, bars, more);
        if (rest !== undefined) steps.push({ part, option, spent, least: spent + rest, more });
      }
    }
    steps.sort((a, b) => a.least - b.least);
    parts = distinct(steps, (item + 1) * words, sets, spare, bars);
    [sets, spare] = [spare, sets];
  }
  return parts[0] && optionsOf(parts[0]);
}

function optionsOf(part: Part): number[] {
  const options: number[] = [];
  for (let at: Part | undefined = part; at?.before; at = at.before) options.push(at.option);
  return options.reverse();
}

/** The least that the items from one on can still cost when two sets bar their options; undefined when one of them has no
 * option left. */
function leastRest(
  costs: Costs,
  item: number,
  sets: Uint32Array,
  from: number,
  { words, width, bits }: Bars,
  more: number,
): number | undefined {
  let least = 0;
  for (let at = item * words; at < width; at += words) {
    const mine = costs[at / words] ?? [];
    let word = 0;
    let free = 0;
    for (; word < words && free === 0; word++)
      free = ~((sets[from + at + word] ?? 0) | (bits[more + at + word] ?? 0));
    const cost = free === 0 ? undefined : mine[word * 32 - 1 - Math.clz32(free & -free)];
    if (cost === undefined) return undefined;
    least += cost;
  }
  return least;
}

/** The parts that the first few steps lead to, none barring the same later options (from the word `later` on) as one before
 * it; the sets of the new parts are written into `next`. */
function distinct(
  steps: readonly Step[],
  later: number,
  sets: Uint32Array,
  next: Uint32Array,
  { width, bits }: Bars,
): Part[] {
  const seen = new Set<number>();
  const kept: Part[] = [];
  for (const { part, option, spent, more } of steps) {
    const from = kept.length * width;
    for (let at = later; at < width; at++)
      next[from + at] = (sets[part.from + at] ?? 0) | (bits[more + at] ?? 0);
    const mark = markOf(next, from + later, from + width);
    if (seen.has(mark)) continue;
    seen.add(mark);
    kept.push({ option, before: part, spent, from });
    if (kept.length === beam) break;
  }
  return kept;
}
