import type { Catalogue } from "./catalogue.ts";
import type { Derived } from "./chain.ts";
import type { DefinitionKind, Unread } from "./definition.ts";
import type { Finding, Severity } from "./finding.ts";
import type { Instrument } from "./instrument.ts";
import type { SheetView } from "./sheet.ts";
import type { Trace } from "./trace.ts";

/** What a rule may look at. `sheets` is present once cards have been composed, `fits` once they were measured in print. */
export type RuleInput = {
  readonly catalogue: Catalogue;
  readonly derived: Derived;
  readonly today: string;
  readonly sheets?: readonly SheetView[];
  readonly fits?: readonly SheetFit[];
  /** What each sheet rests on, by sheet id; present with the sheets. */
  readonly traces?: ReadonlyMap<string, Trace>;
  /** What could not be read whole: no rule says that it is missing. */
  readonly unread?: readonly Unread[];
  /** What the other rules found; given to the rules about sign-offs, which speak last. */
  readonly findings?: readonly Finding[];
};

/** What runs over, millimetres; with the rows that would have to go for the rest to fit, when there are rows. */
export type Overflow = {
  readonly what: string;
  readonly by: number;
  readonly rows?: { readonly of: number; readonly fit: number; readonly over: readonly string[] };
};

/** What the browser measured of one sheet. */
export type SheetFit = {
  readonly sheet: string;
  readonly pages: number;
  readonly overflow: readonly Overflow[];
  readonly missing: readonly string[];
};

/** What a rule needs whole before it can say that something is absent: a kind of definition, or a kind of instrument. */
export type Needed = DefinitionKind | Instrument["kind"];

/** What a rule yields: the definition's file and path, and the message with its numbers. */
export type Breach = {
  readonly file: string;
  readonly path: readonly (string | number)[];
  readonly message: string;
  readonly severity?: Severity;
  readonly fix?: string;
  /** In place of the rule's own. */
  readonly needsAll?: readonly Needed[];
};

/** A named check that is true of every publishable library. */
export type Rule = {
  readonly id: string;
  readonly severity: Severity;
  readonly about:
    | "screw"
    | "chain"
    | "instrument"
    | "plate"
    | "tray"
    | "technique"
    | "sheet"
    | "case"
    | "words"
    | "sign-off"
    | "reading";
  readonly summary: string;
  readonly why: string;
  readonly fix: string;
  /** A published source, or "common practice". */
  readonly source: string;
  /** Of what it says that something is absent: while one of these is unread it says nothing of that system. */
  readonly needsAll?: readonly Needed[];
  check(input: RuleInput): Iterable<Breach>;
  readonly examples: readonly RuleExample[];
};

/** An example is documentation and test at once: the change it makes to the small reference library, and what is said. */
export type RuleExample = {
  readonly title: string;
  readonly passes: boolean;
  /** In words with numbers, for the rule's page. */
  readonly shows: string;
  /** Edits of the reference library: "kind/id" + path -> value (YAML units, before validation); undefined deletes. */
  readonly edits: readonly {
    readonly file: string;
    readonly path: readonly (string | number)[];
    readonly value: unknown;
  }[];
  /** Composed sheets the example brings itself, for rules that look at sheets. */
  readonly sheets?: readonly SheetView[];
  /** Print measurements the example brings itself. */
  readonly fits?: readonly SheetFit[];
  /** Traces of sheets the example brings itself. */
  readonly traces?: readonly Trace[];
  /** Findings of other rules the example brings itself, for rules about sign-offs. */
  readonly findings?: readonly Finding[];
  /** The day of the check, where it matters. */
  readonly today?: string;
};
