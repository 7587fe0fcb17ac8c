import type { BuiltPack, BuiltPrint } from "../model/built.ts";
import type { Catalogue } from "../model/catalogue.ts";
import type { Derived } from "../model/chain.ts";
import type { Pictures } from "../model/figure.ts";
import type { Finding } from "../model/finding.ts";
import type { KeptMutation } from "../model/mutation.ts";
import type { Rule } from "../model/rule.ts";
import type { SheetView } from "../model/sheet.ts";
import type { SiteDrawings } from "../model/site-drawings.ts";
import type { Locate } from "../model/source-file.ts";
import type { Trace } from "../model/trace.ts";

/** Everything the site shows; fragments and prints are keyed `${sheet.id}.${format.id}`. */
export type SiteInput = {
  readonly catalogue: Catalogue;
  readonly derived: Derived;
  readonly sheets: readonly SheetView[];
  /** What each sheet rests on, by sheet id. */
  readonly traces: ReadonlyMap<string, Trace>;
  readonly locate: Locate;
  readonly fragments: ReadonlyMap<string, string>;
  readonly findings: readonly Finding[];
  readonly prints: ReadonlyMap<string, BuiltPrint>;
  readonly packs: readonly BuiltPack[];
  readonly rules: readonly Rule[];
  /** The kept run of mutants, where there is one. */
  readonly mutation?: KeptMutation;
  readonly pictures: Pictures;
  readonly drawings: SiteDrawings;
  readonly today: string;
  readonly pdf: boolean;
};
