import { check } from "./check/check.ts";
import { rules } from "./check/rules.ts";
import { waits } from "./check/waits.ts";
import { compose } from "./compose/compose.ts";
import { traceSheets } from "./compose/trace/trace-sheets.ts";
import { derive } from "./derive/derive.ts";
import { newestCardDay } from "./derive/newest-card-day.ts";
import { pictures } from "./draw/pictures.ts";
import type { Catalogue } from "./model/catalogue.ts";
import type { Derived } from "./model/chain.ts";
import type { Unread } from "./model/definition.ts";
import type { Finding } from "./model/finding.ts";
import type { SheetView } from "./model/sheet.ts";
import type { Locate } from "./model/source-file.ts";
import type { Trace } from "./model/trace.ts";
import { readLibrary } from "./read/read-library.ts";
import { resolve } from "./resolve/resolve.ts";
import { validate } from "./validate/validate.ts";

/** A library as far as it could be read: the catalogue holds what holds together, the findings say what does not. */
export type Library = {
  readonly catalogue?: Catalogue;
  readonly locate: Locate;
  readonly findings: readonly Finding[];
  /** Files that lost something to a fault elsewhere. */
  readonly incomplete: ReadonlySet<string>;
  /** What was refused, or lost something to a fault elsewhere. */
  readonly unread: readonly Unread[];
};

/** What the command line asks of a build. `today` is absent unless it was given. */
export type BuildOptions = {
  readonly library: string;
  readonly out: string;
  readonly today?: string;
  readonly format: "text" | "json";
  readonly pdf: boolean;
  readonly colour: boolean;
};

/** Reads, validates and resolves a library folder. */
export function loadLibrary(root: string): Library {
  const read = readLibrary(root);
  const valid = validate(read.sources);
  const resolved = resolve(valid.definitions);
  return {
    ...(resolved.catalogue ? { catalogue: resolved.catalogue } : {}),
    locate: read.locate,
    incomplete: resolved.incomplete,
    unread: resolved.unread,
    findings: [...read.findings, ...valid.findings, ...resolved.findings],
  };
}

/** A library with all that reading and the rules say of it; sheets are composed when nothing stops them. */
export type CheckedLibrary = Library & {
  /** The day that is printed and judged by, ISO 8601. */
  readonly today: string;
  readonly derived?: Derived;
  readonly sheets?: readonly SheetView[];
  /** What each sheet rests on, by sheet id. */
  readonly traces?: ReadonlyMap<string, Trace>;
  /** How many rules may say more once what was refused can be read. */
  readonly waiting: number;
};

const stops = (findings: readonly Finding[]): boolean =>
  findings.some(({ severity }) => severity === "stop");

/** Loads a library, derives its chains, composes its sheets and lets the rules judge all of it. */
export function checkLibrary(root: string, given?: string): CheckedLibrary {
  const library = loadLibrary(root);
  const { catalogue } = library;
  const today = given ?? (catalogue ? newestCardDay(catalogue) : "1970-01-01");
  if (!catalogue) return { ...library, today, waiting: rules.length };
  const derived = derive(catalogue);
  const facts = { catalogue, derived, today };
  const told = check({ ...facts, unread: library.unread }).filter(
    ({ place }) => !library.incomplete.has(place.file),
  );
  const judged = [...library.findings, ...told];
  const waiting = rules.filter((rule) => waits(rule, library.unread)).length;
  if (stops(judged)) return { ...library, today, derived, findings: judged, waiting };
  const sheets = compose({ ...facts, pictures });
  const traces = traceSheets(facts, sheets);
  const findings = [...library.findings, ...check({ ...facts, sheets, traces })];
  return { ...library, today, derived, sheets, traces, findings, waiting };
}
