/** What a choice is made from. The options of all items are numbered in one row, those of an item from `starts[item]` to
 * before `starts[item + 1]`. */
export type Options = {
  readonly starts: readonly number[];
  /** The item of each option. */
  readonly owners: Int32Array;
  readonly cost: Float64Array;
  /** The options of other items that cannot stand beside the given one, in order. */
  bars(option: number): Int32Array;
  /** What an item's option costs besides, beside what the others have chosen (-1 for nothing yet). */
  together(item: number, option: number, chosen: Int32Array): number;
};

/** What a clash counts against the costs while places are looked for, what it counts when they are found, and how often all is
 * looked over for cheaper places then. */
const [bad, never, polishes] = [12, 1e6, 6];

/** One option an item so that none clash and the sum of costs is small, -1 for items that found no place. Each item first
 * takes what looks best; then, in at most `moves` moves, the item in trouble that gains most takes another option; where no move gains,
 * each pair that clashes weighs more from then on, until it is worth parting (breakout search). At last each item moves to a
 * cheaper free option until none does. No chance in it: the same question has the same answer. */
export function choosePlaces(moves: number, options: Options): Int32Array {
  const field = new Field(options);
  for (let item = 0; item < field.items; item++) field.take(item, field.best(item).option);
  for (let move = 1; move <= moves && field.unravel(); move++);
  field.drop();
  for (let round = 0; round < polishes && field.polish(); round++);
  return field.chosen;
}

/** Where the first of numbers in order stands that is not less than the one sought. */
function firstFrom(numbers: Int32Array, sought: number): number {
  let [low, high] = [0, numbers.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((numbers[middle] ?? 0) < sought) low = middle + 1;
    else high = middle;
  }
  return low;
}

type Best = { readonly option: number; readonly value: number };

/** What is chosen so far, and for every option how much weighs what it clashes with. */
class Field {
  readonly items: number;
  readonly chosen: Int32Array;
  readonly #options: Options;
  readonly #against: Float64Array;
  readonly #weights: Float64Array;
  #clash = bad;

  constructor(options: Options) {
    this.#options = options;
    this.items = options.starts.length - 1;
    this.chosen = new Int32Array(this.items).fill(-1);
    this.#against = new Float64Array(options.cost.length);
    this.#weights = new Float64Array(this.items * this.items).fill(1);
  }

  /** An item's option of the least value, -1 when it has none. */
  best(item: number): Best {
    const { starts } = this.#options;
    const end = starts[item + 1] ?? 0;
    let [option, value] = [-1, Infinity];
    for (let at = starts[item] ?? 0; at < end; at++) {
      if (this.#alone(at) >= value) continue;
      const here = this.#value(item, at);
      if (here >= value) continue;
      option = at;
      value = here;
    }
    return { option, value };
  }

  /** What an option is worth whatever stands beside it; never more than all that it is worth. */
  #alone(option: number): number {
    return (this.#against[option] ?? 0) * this.#clash + (this.#options.cost[option] ?? 0);
  }

  #value(item: number, option: number): number {
    return this.#alone(option) + this.#options.together(item, option, this.chosen);
  }

  /** Gives an item an option, or none (-1). */
  take(item: number, option: number): void {
    const before = this.chosen[item] ?? -1;
    if (before >= 0) this.#weigh(item, before, -1);
    if (option >= 0) this.#weigh(item, option, 1);
    this.chosen[item] = option;
  }

  /** Adds what a clash weighs, `by` times, to all options that clash with an item's option. */
  #weigh(item: number, option: number, by: number): void {
    const { owners, bars } = this.#options;
    const [against, weights] = [this.#against, this.#weights];
    const first = item * this.items;
    for (const at of bars(option))
      against[at] = (against[at] ?? 0) + by * (weights[first + (owners[at] ?? 0)] ?? 1);
  }

  #troubled(item: number): boolean {
    const option = this.chosen[item] ?? -1;
    return option >= 0 && (this.#against[option] ?? 0) > 0;
  }

  /** Moves the item in trouble that gains most, or weighs all clashes more; false when none is in trouble. */
  unravel(): boolean {
    let [mover, to, most] = [-1, -1, 1e-9];
    const troubled: number[] = [];
    for (let item = 0; item < this.items; item++) {
      if (!this.#troubled(item)) continue;
      troubled.push(item);
      const { option, value } = this.best(item);
      const gain = this.#value(item, this.chosen[item] ?? -1) - value;
      if (gain > most) [mover, to, most] = [item, option, gain];
    }
    if (mover >= 0) this.take(mover, to);
    else this.#weighMore(troubled);
    return troubled.length > 0;
  }

  /** Every pair of troubled items whose options clash weighs one more, and with it all that the other's options clash with. */
  #weighMore(troubled: readonly number[]): void {
    for (const item of troubled) {
      const bars = this.#options.bars(this.chosen[item] ?? -1);
      for (const other of troubled) {
        const theirs = this.chosen[other] ?? -1;
        if (bars[firstFrom(bars, theirs)] === theirs) this.#weighPairMore(item, other, bars);
      }
    }
  }

  #weighPairMore(item: number, other: number, bars: Int32Array): void {
    const { starts } = this.#options;
    const pair = item * this.items + other;
    this.#weights[pair] = (this.#weights[pair] ?? 0) + 1;
    const end = firstFrom(bars, starts[other + 1] ?? 0);
    for (let index = firstFrom(bars, starts[other] ?? 0); index < end; index++) {
      const at = bars[index] ?? -1;
      this.#against[at] = (this.#against[at] ?? 0) + 1;
    }
  }

  /** Takes away the places of items in trouble, the one in most trouble first, until none is; nothing clashes from then on. */
  drop(): void {
    this.#clash = never;
    for (;;) {
      let [worst, most] = [-1, 0];
      for (let item = 0; item < this.items; item++) {
        const against = this.#against[this.chosen[item] ?? -1] ?? 0;
        if (against > most) [worst, most] = [item, against];
      }
      if (worst < 0) return;
      this.take(worst, -1);
    }
  }

  /** Moves each item to its cheapest free option; tells whether any moved. */
  polish(): boolean {
    let moved = false;
    for (let item = 0; item < this.items; item++) {
      const option = this.chosen[item] ?? -1;
      const { option: other, value } = this.best(item);
      const now = option < 0 ? never : this.#value(item, option);
      if (value >= now - 1e-9) continue;
      this.take(item, other);
      moved = true;
    }
    return moved;
  }
}
