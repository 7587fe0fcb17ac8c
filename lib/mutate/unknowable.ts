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
export const unknowables: readonly Unknowable[] = [
  {
    what: "What was seen, missing or not looked for in a hospital's trays",
    why: "A shelf is a fact of the outside world; nothing in the library is a second witness of it.",
    of: "site",
    field: /^trays(\.(absent|not_checked|empty_lengths).*)?$/,
    kinds: /removed|reference/,
  },
  {
    what: "A planned hole moved to another hole that is free",
    why: "Any free hole of the same kind could have been planned; the surgeon decides.",
    of: "case",
    field: /^plan\.hole$/,
    kinds: /^reference$/,
  },
  {
    what: "A whole case left out",
    why: "Nothing names a case; that it was planned is known outside the library only.",
    of: "case",
    field: /^$/,
    kinds: /^part-removed$/,
  },
  {
    what: "A technique that is offered beside the usual one left out as a whole",
    why: "Nothing names it; whether a publisher offers it is the publisher's choice.",
    of: "recipe",
    field: /^$/,
    kinds: /^part-removed$/,
  },
  {
    what: "A caution for a whole technique beyond those it requires, left out or replaced",
    why: "It is the publisher's own addition; no list but this one holds it.",
    of: "recipe",
    field: /^cautions$/,
    kinds: /removed|reference/,
  },
  {
    what: "A caution for a whole procedure beyond those it requires, left out or replaced",
    why: "It is the publisher's own addition; no list but this one holds it.",
    of: "procedure",
    field: /^cautions$/,
    kinds: /removed|reference/,
  },
  {
    what: "The threaded end of the openings in a plate's row turned round",
    why: "Both ways are made; only the drawing tells which one this plate has.",
    of: "plate",
    field: /^row\.(threaded_end|exceptions.*)$/,
    kinds: /^flip$/,
  },
];

const fieldOf = ({ path }: Mutant): string =>
  path.filter((key) => typeof key === "string").join(".");

/** The declaration that covers a mutant, if any. */
export function unknowable(mutant: Mutant): Unknowable | undefined {
  return unknowables.find(
    ({ of, field, kinds }) =>
      of === mutant.definition && field.test(fieldOf(mutant)) && kinds.test(mutant.kind),
  );
}
