/** A question of choice: for each item its options' costs, and whether two options of two items exclude each other. */
export type Choice = {
  readonly costs: readonly (readonly number[])[];
  readonly clash: (item: number, option: number, other: number, otherOption: number) => boolean;
};

const rounds = 3000;
const rest = 7;
const clashCost = 1000;

/** One option an item, without clashes where the search finds such a choice, then as cheap as single and double
 * exchanges make it. Tabu search over the clashing items, all ties settled by order: the same question has one answer. */
export function chooseCandidates({ costs, clash }: Choice): { chosen: number[]; clashes: number } {
  const seen = costs.map((mine) => mine.map(() => new Map<number, boolean>()));
  const clashes = (item: number, option: number, other: number, otherOption: number): boolean => {
    const row = seen[item]?.[option];
    const key = other * 4096 + otherOption;
    const known = row?.get(key);
    if (known !== undefined) return known;
    const answer = clash(item, option, other, otherOption);
    row?.set(key, answer);
    return answer;
  };
  const chosen = costs.map(() => 0);
  const foes = (item: number, option: number): number[] =>
    chosen.flatMap((otherOption, other) => (other !== item && clashes(item, option, other, otherOption) ? [other] : []));
  const priceOf = (item: number, option: number): number =>
    foes(item, option).length * clashCost + (costs[item]?.[option] ?? Infinity);
  const clashing = (): number[] => chosen.flatMap((option, item) => (foes(item, option).length > 0 ? [item] : []));

  const restUntil = costs.map((mine) => mine.map(() => 0));
  let best = { chosen: [...chosen], clashes: Infinity };
  for (let round = 1; round <= rounds; round++) {
    const troubled = clashing();
    if (troubled.length < best.clashes) best = { chosen: [...chosen], clashes: troubled.length };
    if (troubled.length === 0) break;
    let move: { item: number; option: number; gain: number } | undefined;
    for (const item of troubled) {
      const now = priceOf(item, chosen[item] ?? 0);
      (costs[item] ?? []).forEach((_, option) => {
        if (option === chosen[item] || (restUntil[item]?.[option] ?? 0) > round) return;
        const gain = now - priceOf(item, option);
        if (move === undefined || gain > move.gain) move = { item, option, gain };
      });
    }
    if (move === undefined) continue;
    const left = restUntil[move.item];
    if (left) left[chosen[move.item] ?? 0] = round + rest + (round % 5);
    chosen[move.item] = move.option;
  }
  chosen.splice(0, chosen.length, ...best.chosen);
  if (best.clashes === 0) cheapen(costs, chosen, foes);
  return { chosen, clashes: best.clashes };
}

/** Moves items to cheaper options, pushing at most one other item aside, while the sum falls and nothing clashes. */
function cheapen(
  costs: readonly (readonly number[])[],
  chosen: number[],
  foes: (item: number, option: number) => number[],
): void {
  for (let better = true; better; ) {
    better = false;
    for (let item = 0; item < chosen.length; item++) {
      const mine = costs[item] ?? [];
      for (let option = 0; option < mine.length; option++) {
        const before = chosen[item] ?? 0;
        const saved = (mine[before] ?? 0) - (mine[option] ?? 0);
        if (saved <= 1e-9) continue;
        const [foe, ...more] = foes(item, option);
        if (more.length > 0) continue;
        chosen[item] = option;
        if (foe === undefined || giveWay(costs[foe] ?? [], chosen, foe, saved, foes)) better = true;
        else chosen[item] = before;
      }
    }
  }
}

function giveWay(
  costs: readonly number[],
  chosen: number[],
  foe: number,
  saved: number,
  foes: (item: number, option: number) => number[],
): boolean {
  const before = chosen[foe] ?? 0;
  const free = costs.findIndex(
    (cost, option) => option !== before && cost - (costs[before] ?? 0) < saved - 1e-9 && foes(foe, option).length === 0,
  );
  if (free < 0) return false;
  chosen[foe] = free;
  return true;
}
