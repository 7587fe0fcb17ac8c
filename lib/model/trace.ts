import type { DefinitionKind } from "./definition.ts";

/** One field of one definition that a sheet rests on; an empty path is the whole definition. */
export type Fact = {
  readonly kind: DefinitionKind;
  readonly id: string;
  readonly file: string;
  readonly path: readonly (string | number)[];
};

/** What a sheet says with a number in it, and the facts it says it from. */
export type Claim = {
  /** "mark of drill 2.7", "pieces in slot A1". */
  readonly what: string;
  /** As printed; several where one set of facts gives several numbers. */
  readonly words: readonly string[];
  readonly facts: readonly Fact[];
  /** For a derived number: how it follows from the facts. */
  readonly how?: string;
};

/** What one sheet rests on, whatever its paper. */
export type Trace = {
  readonly sheet: string;
  readonly card: string;
  /** Every definition the sheet was made from, in order of kind and id. */
  readonly uses: readonly Fact[];
  readonly claims: readonly Claim[];
  /** Printed words with a number that no fact of the library says. */
  readonly untold: readonly string[];
};
