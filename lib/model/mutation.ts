import { z } from "zod";
import type { DefinitionKind } from "./definition.ts";

/** Every kind of change that is made to a library, in the order of the table. */
export const mutantKinds = {
  "ten-times": { title: "number × 10", group: "unit slip" },
  "a-tenth": { title: "number ÷ 10", group: "unit slip" },
  "inch-times": { title: "length × 25.4", group: "unit slip" },
  "inch-over": { title: "length ÷ 25.4", group: "unit slip" },
  "tenth-more": { title: "measure + 0.1", group: "small slip" },
  "tenth-less": { title: "measure − 0.1", group: "small slip" },
  "fifth-more": { title: "measure + 0.2", group: "small slip" },
  "fifth-less": { title: "measure − 0.2", group: "small slip" },
  "one-more": { title: "count + 1", group: "small slip" },
  "one-less": { title: "count − 1", group: "small slip" },
  reference: { title: "reference to another of its kind", group: "reference" },
  "step-removed": { title: "step removed", group: "removal" },
  "caution-removed": { title: "caution removed", group: "removal" },
  "entry-removed": { title: "other entry of a list removed", group: "removal" },
  "fact-removed": { title: "optional fact removed", group: "removal" },
  "part-removed": { title: "definition removed", group: "removal" },
  flip: { title: "side, end, use or datum flipped", group: "flip" },
  generation: { title: "generation changed", group: "flip" },
  order: { title: "neighbours in a list swapped", group: "order" },
} as const;
export type MutantKind = keyof typeof mutantKinds;

/** One change of one file of a library: the value put at a path. Without a value the key is taken away, or at the empty path the file. */
export type Mutant = {
  readonly kind: MutantKind;
  readonly definition: DefinitionKind;
  readonly file: string;
  readonly path: readonly (string | number)[];
  readonly value?: unknown;
  /** In words: "2.7 becomes 27". */
  readonly says: string;
};

/** What became of a mutant. */
export type Outcome = {
  readonly mutant: Mutant;
  /** A schema or a broken reference refused the library before any rule looked at it. */
  readonly refused: boolean;
  /** Some printed sheet shows other facts; never true of a refused mutant, which has no sheets. */
  readonly harmful: boolean;
  /** Rules that found something new which stops or must be signed, in order. */
  readonly rules: readonly string[];
};

const count = z.number().int().min(0);
/** Counts of mutants: `caught` by rules; `harmful` are those that passed the schemas and could be known, of which rules caught `harmfulCaught`. */
const counts = {
  mutants: count,
  refused: count,
  caught: count,
  harmful: count,
  harmfulCaught: count,
  unknowable: count,
};

/** One run over a library, as it is kept: counts by kind, and the fingerprints of the library and of the code that judged it. */
export const MutationRun = z.strictObject({
  library: z.string(),
  rules: z.string(),
  /** Every so-many-th mutant of each kind was judged; 1 is all of them. */
  sample: count.min(1),
  rows: z.array(
    z.strictObject({ kind: z.enum(Object.keys(mutantKinds) as MutantKind[]), ...counts }),
  ),
  unknowable: z.array(z.strictObject({ what: z.string(), why: z.string(), mutants: count })),
});
export type MutationRun = z.output<typeof MutationRun>;
/** A kept run, and whether library and rules are still those it was measured on. */
export type KeptMutation = {
  readonly run: MutationRun;
  readonly isLibrary: boolean;
  readonly areRules: boolean;
};
export type MutationRow = MutationRun["rows"][number];
