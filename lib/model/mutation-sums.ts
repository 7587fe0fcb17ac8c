import { type MutationRow, type MutationRun, mutantKinds } from "./mutation.ts";

const sum = (rows: readonly MutationRow[], what: Exclude<keyof MutationRow, "kind">): number =>
  rows.reduce((total, row) => total + row[what], 0);

/** A share in percent with one decimal, rounded down so that it never flatters; 100 of nothing. */
export function percent(part: number, whole: number): string {
  return whole === 0 ? "100.0" : (Math.floor((part * 1000) / whole) / 10).toFixed(1);
}

/** What a run comes to as a whole. Unit slips count as caught when a schema refused them or a rule found them; harmful mutants only when a rule did. */
export function mutationSums({ rows }: MutationRun): {
  readonly mutants: number;
  readonly refused: number;
  readonly unit_slips: number;
  readonly unit_slips_refused: number;
  readonly unit_slips_caught: number;
  readonly harmful: number;
  readonly harmful_caught: number;
  readonly survivors: number;
  readonly unknowable: number;
} {
  const slips = rows.filter(({ kind }) => mutantKinds[kind].group === "unit slip");
  const [harmful, caught] = [sum(rows, "harmful"), sum(rows, "harmfulCaught")];
  return {
    mutants: sum(rows, "mutants"),
    refused: sum(rows, "refused"),
    unit_slips: sum(slips, "mutants"),
    unit_slips_refused: sum(slips, "refused"),
    unit_slips_caught: sum(slips, "refused") + sum(slips, "caught"),
    harmful,
    harmful_caught: caught,
    survivors: harmful - caught,
    unknowable: sum(rows, "unknowable"),
  };
}
