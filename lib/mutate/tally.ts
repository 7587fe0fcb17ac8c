import {
  type MutantKind,
  type MutationRow,
  type MutationRun,
  mutantKinds,
  type Outcome,
} from "../model/mutation.ts";
import { unknowable, unknowables } from "./unknowable.ts";

const some = (outcomes: readonly Outcome[], test: (outcome: Outcome) => boolean): number =>
  outcomes.filter(test).length;
const isCaught = ({ rules, refused }: Outcome): boolean => !refused && rules.length > 0;
const isKnowable = ({ mutant }: Outcome): boolean => unknowable(mutant) === undefined;

/** True of a harmful mutant that got past schemas and rules although it could be known. */
export const survives = (outcome: Outcome): boolean =>
  outcome.harmful && isKnowable(outcome) && !isCaught(outcome);

function rowOf(kind: MutantKind, own: readonly Outcome[]): MutationRow {
  const harmful = own.filter((outcome) => outcome.harmful && isKnowable(outcome));
  return {
    kind,
    mutants: own.length,
    refused: some(own, ({ refused }) => refused),
    caught: some(own, isCaught),
    harmful: harmful.length,
    harmfulCaught: some(harmful, isCaught),
    unknowable: some(own, (outcome) => outcome.harmful && !isKnowable(outcome)),
  };
}

/** What a run came to: a row for each kind of mutant that was made, and what was declared unknowable with how often it met. */
export function tally(
  outcomes: readonly Outcome[],
  about: Pick<MutationRun, "library" | "rules" | "sample">,
): MutationRun {
  const rows = (Object.keys(mutantKinds) as MutantKind[]).map((kind) =>
    rowOf(
      kind,
      outcomes.filter(({ mutant }) => mutant.kind === kind),
    ),
  );
  return {
    ...about,
    rows: rows.filter(({ mutants }) => mutants > 0),
    unknowable: unknowables.map((one) => ({
      what: one.what,
      why: one.why,
      mutants: some(outcomes, ({ harmful, mutant }) => harmful && unknowable(mutant) === one),
    })),
  };
}
