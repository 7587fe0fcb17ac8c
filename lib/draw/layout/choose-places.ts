/** What a choice is made from. The options of all items are numbered in one row, those of an item from `starts[item]` to
 * before `starts[item + 1]`. */
export type Options = {
  readonly starts: readonly number[];
  /** For each item those whose options may clash with its own. */
  readonly rivals: readonly (readonly number[])[];
  readonly cost: Float64Array;
  /** 1 for each option that cannot stand beside the given one. */
  bars(option: number): Uint8Array;
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
    let [option, value] = [-1, Infinity];
    for (let at = starts[item] ?? 0; at < (starts[item + 1] ?? 0); at++) {
      const here = this.#value(item, at, value);
      if (here < value) [option, value] = [at, here];
    }
    return { option, value };
  }

  #value(item: number, option: number, most = Infinity): number {
    const { cost, together } = this.#options;
    const own = (this.#against[option] ?? 0) * this.#clash + (cost[option] ?? 0);
    return own >= most ? own : own + together(item, option, this.chosen);
  }

  /** Gives an item an option, or none (-1). */
  take(item: number, option: number): void {
    const before = this.chosen[item] ?? -1;
    for (const other of this.#options.rivals[item] ?? []) {
      const weight = this.#weights[item * this.items + other] ?? 1;
      if (before >= 0) this.#weigh(before, other, -weight);
      if (option >= 0) this.#weigh(option, other, weight);
    }
    this.chosen[item] = option;
  }

  /** Adds `by` to all options of an item that clash with the given option. */
  #weigh(option: number, item: number, by: number): void {
    const { starts } = this.#options;
    const bars = this.#options.bars(option);
    const against = this.#against;
    const end = starts[item + 1] ?? 0;
    for (let at = starts[item] ?? 0; at < end; at++)
      if (bars[at] === 1) against[at] = (against[at] ?? 0) + by;
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

  #weighMore(troubled: readonly number[]): void {
    for (const item of troubled) {
      const option = this.chosen[item] ?? -1;
      for (const other of troubled) {
        const theirs = this.chosen[other] ?? -1;
        if (this.#options.bars(option)[theirs] !== 1) continue;
        this.#weights[item * this.items + other] =
          (this.#weights[item * this.items + other] ?? 0) + 1;
        this.#weigh(option, other, 1);
      }
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
