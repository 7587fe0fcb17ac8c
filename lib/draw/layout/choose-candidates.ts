/** A question of choice: for each item its options' costs, the items it may clash with, and whether two options of two items
 * exclude each other. */
export type Choice = {
  readonly costs: readonly (readonly number[])[];
  readonly rivals: readonly (readonly number[])[];
  readonly clash: (item: number, option: number, other: number, otherOption: number) => boolean;
};

type Option = { readonly item: number; readonly option: number; readonly cost: number };

const rounds = 300;
const rest = 6;
const clashCost = 1000;

/** The options in use, and for every option how many of those in use exclude it. */
class Board {
  readonly options: readonly (readonly Option[])[];
  readonly used: number[];
  private readonly against: number[][];
  private readonly choice: Choice;

  constructor(choice: Choice) {
    this.choice = choice;
    this.options = choice.costs.map((costs, item) =>
      costs.map((cost, option) => ({ item, option, cost })),
    );
    this.against = choice.costs.map((costs) => costs.map(() => 0));
    this.used = choice.costs.map(() => 0);
    for (const item of this.used.keys()) this.count(item, 1);
  }

  foes(item: number, option: number): number {
    return this.against[item]?.[option] ?? 0;
  }

  price({ item, option, cost }: Option): number {
    return this.foes(item, option) * clashCost + cost;
  }

  cost(item: number, option = this.used[item] ?? 0): number {
    return this.choice.costs[item]?.[option] ?? Number.POSITIVE_INFINITY;
  }

  troubled(): number[] {
    return this.used.flatMap((option, item) => (this.foes(item, option) > 0 ? [item] : []));
  }

  /** The one item in the way of an option that has a single foe. */
  foe(item: number, option: number): number {
    return (
      (this.choice.rivals[item] ?? []).find((other) =>
        this.choice.clash(item, option, other, this.used[other] ?? 0),
      ) ?? -1
    );
  }

  move(item: number, option: number): void {
    this.count(item, -1);
    this.used[item] = option;
    this.count(item, 1);
  }

  private count(item: number, by: 1 | -1): void {
    const option = this.used[item] ?? 0;
    for (const other of this.choice.rivals[item] ?? []) {
      const row = this.against[other] ?? [];
      for (let index = 0; index < row.length; index++) {
        if (this.choice.clash(item, option, other, index)) row[index] = (row[index] ?? 0) + by;
      }
    }
  }
}

/** One option an item, without clashes where the search finds such a choice, then as cheap as single and double
 * exchanges make it. Tabu search over the clashing items, all ties settled by order: the same question has one answer. */
export function chooseCandidates(choice: Choice): { chosen: readonly number[]; clashes: number } {
  const board = new Board(choice);
  const restUntil = choice.costs.map((costs) => costs.map(() => 0));
  for (let round = 1; round <= rounds; round++) {
    const troubled = board.troubled();
    if (troubled.length === 0) break;
    const move = bestMove(board, troubled, restUntil, round);
    if (move === undefined) continue;
    const left = restUntil[move.item];
    if (left) left[board.used[move.item] ?? 0] = round + rest + (round % 5);
    board.move(move.item, move.option);
  }
  const clashes = board.troubled().length;
  if (clashes === 0) cheapen(board);
  return { chosen: board.used, clashes };
}

function bestMove(
  board: Board,
  troubled: readonly number[],
  restUntil: readonly (readonly number[])[],
  round: number,
): Option | undefined {
  let best: Option | undefined;
  let most = Number.NEGATIVE_INFINITY;
  for (const item of troubled) {
    const used = board.used[item] ?? 0;
    const now = board.foes(item, used) * clashCost + board.cost(item);
    for (const option of board.options[item] ?? []) {
      if (option.option === used || (restUntil[item]?.[option.option] ?? 0) > round) continue;
      const gain = now - board.price(option);
      if (gain > most) [best, most] = [option, gain];
    }
  }
  return best;
}

/** Moves items to cheaper options, pushing at most one other item aside, while the sum falls and nothing clashes. */
function cheapen(board: Board): void {
  for (let better = true; better; ) {
    better = false;
    for (const { item, option, cost } of board.options.flat()) {
      const before = board.used[item] ?? 0;
      const saved = board.cost(item) - cost;
      if (saved <= 1e-9 || board.foes(item, option) > 1) continue;
      const foe = board.foes(item, option) === 1 ? board.foe(item, option) : -1;
      board.move(item, option);
      if (foe < 0 || givesWay(board, foe, saved)) better = true;
      else board.move(item, before);
    }
  }
}

function givesWay(board: Board, foe: number, saved: number): boolean {
  const most = board.cost(foe) + saved - 1e-9;
  const free = board.options[foe]?.find(
    ({ option, cost }) =>
      cost < most && option !== board.used[foe] && board.foes(foe, option) === 0,
  );
  if (free === undefined) return false;
  board.move(foe, free.option);
  return true;
}
