import type { DefinitionKind } from "../model/definition.ts";
import type { Mutant } from "../model/mutation.ts";

/** A kind of change that no rule over a library could know, and why. */
export type Unknowable = {
  readonly what: string;
  readonly why: string;
  readonly of: DefinitionKind;
  /** The field, its list positions left out: "plan.lengths". */
  readonly field: RegExp;
  readonly kinds: RegExp;
};

/** What a library states once, without a second witness and within what is plausible, declared before anything is measured. */
export const unknowables: readonly Unknowable[] = [];

const fieldOf = ({ path }: Mutant): string =>
  path.filter((key) => typeof key === "string").join(".");

/** The declaration that covers a mutant, if any. */
export function unknowable(mutant: Mutant): Unknowable | undefined {
  return unknowables.find(
    ({ of, field, kinds }) =>
      of === mutant.definition && field.test(fieldOf(mutant)) && kinds.test(mutant.kind),
  );
}
