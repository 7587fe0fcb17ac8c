/** A thing to lay on a table: things of one `step` of their group may change places; `alikeWith` names the others it may be taken for. */
export type Layable = {
  readonly id: string;
  readonly step: number;
  readonly alikeWith: readonly string[];
};
/** A column of a table: a thing, or a place left free. */
export type Column<T> = T | undefined;

/** More things than this in one step stay in the order given. */
const mostTried = 5;

/** Every order of some things, that in which they are given first. */
function ordersOf<T>(things: readonly T[]): readonly (readonly T[])[] {
  if (things.length < 2) return [things];
  return things.flatMap((first, index) =>
    ordersOf(things.toSpliced(index, 1)).map((rest) => [first, ...rest]),
  );
}

/** Things in columns after `last`, a place left free between two that are taken for one another. */
function apart<T extends Layable>(things: readonly T[], last: Column<T>): readonly Column<T>[] {
  let before = last;
  return things.flatMap((thing) => {
    const near =
      before !== undefined &&
      (before.alikeWith.includes(thing.id) || thing.alikeWith.includes(before.id));
    before = thing;
    return near ? [undefined, thing] : [thing];
  });
}

/** Lays groups of things in order of use, one to a column, so that no two that are taken for one another lie less than two columns apart: things of one
 * step change places first; where that does not help, a column stays free. Of all orders of a step, that with the fewest free columns; of equals, the first. */
export function tableColumns<T extends Layable>(
  groups: readonly (readonly T[])[],
): readonly (readonly Column<T>[])[] {
  let last: Column<T>;
  return groups.map((group) =>
    [...new Set(group.map(({ step }) => step))]
      .sort((a, b) => a - b)
      .flatMap((step) => {
        const things = group.filter((thing) => thing.step === step);
        const orders = things.length > mostTried ? [things] : ordersOf(things);
        const laid = orders.map((order) => apart(order, last));
        const best = laid.reduce((a, b) => (b.length < a.length ? b : a));
        last = best.at(-1) ?? last;
        return best;
      }),
  );
}
