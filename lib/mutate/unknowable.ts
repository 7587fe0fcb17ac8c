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
    what: "A planned technique replaced by another that suits hole and screw",
    why: "Which of them is used is the surgeon's choice; the request is outside the library.",
    of: "case",
    field: /^plan\.recipe$/,
    kinds: /^reference$/,
  },
  {
    what: "The lengths that a plan expects, left out",
    why: "A plan need not expect any; the surgeon decides the length.",
    of: "case",
    field: /^plan\.lengths$/,
    kinds: /^fact-removed$/,
  },
  {
    what: "The planned plate in another of its lengths",
    why: "Any length that has the planned holes could have been asked for.",
    of: "case",
    field: /^holes$/,
    kinds: /^(reference|one-more|one-less)$/,
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
    what: "A whole order of work left out",
    why: "Plates are published without one too; whether there is one is the publisher's choice.",
    of: "procedure",
    field: /^$/,
    kinds: /^part-removed$/,
  },
  {
    what: "One of the acts when something does not go to plan, left out or done in another order",
    why: "The text that teaches it says which; nothing else in the library does.",
    of: "mishap",
    field: /^acts$/,
    kinds: /^(entry-removed|order)$/,
  },
  {
    what: "Whether the surgeon decides when something does not go to plan",
    why: "The text that teaches it says so; nothing else in the library does.",
    of: "mishap",
    field: /^decides$/,
    kinds: /^fact-removed$/,
  },
  {
    what: "One ring more or less on the shank of a drill",
    why: "Only the metal tells, unless another pilot drill has as many.",
    of: "instrument",
    field: /^bands$/,
    kinds: /^one-(more|less)$/,
  },
  {
    what: "The GTIN of a part left out",
    why: "Not every part has one; only its label tells.",
    of: "instrument",
    field: /^gtin$/,
    kinds: /^fact-removed$/,
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
  {
    what: "A hole whose threaded end lies otherwise than in the rest of its row, left out",
    why: "Only the drawing tells that this plate has such a hole.",
    of: "plate",
    field: /^row\.exceptions/,
    kinds: /^fact-removed$/,
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
