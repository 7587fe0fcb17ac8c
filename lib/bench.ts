import { z } from "zod";
import { check } from "./check/check.ts";
import { rules as allRules } from "./check/rules.ts";
import { sheetViews } from "./compose/compose.ts";
import { derive } from "./derive/derive.ts";
import { newestCardDay } from "./derive/newest-card-day.ts";
import type { Derived } from "./model/chain.ts";
import { type Definitions, definitions as kinds } from "./model/definition.ts";
import type { Finding } from "./model/finding.ts";
import type { Mutant, Outcome } from "./model/mutation.ts";
import type { Rule } from "./model/rule.ts";
import type { SourceFile } from "./model/source-file.ts";
import { Stop } from "./model/stop.ts";
import { type Fields, mutants } from "./mutate/mutants.ts";
import { namedPictures } from "./mutate/named-pictures.ts";
import { replaced } from "./mutate/replaced.ts";
import { showsOtherFacts } from "./mutate/shown-facts.ts";
import { readLibrary } from "./read/read-library.ts";
import { references, targets } from "./resolve/references.ts";
import { resolve } from "./resolve/resolve.ts";
import { schemaAt } from "./validate/schema-at.ts";
import { validate } from "./validate/validate.ts";

type Path = readonly (string | number)[];
/** A library read once, with all its mutants and what judges one of them in milliseconds. */
export type Bench = {
  readonly mutants: readonly Mutant[];
  readonly judge: (mutant: Mutant) => Outcome;
};

const units = new Set(["mm", "N·m", "°"] as const);

/** Every place that names a hole or a length of a plate, which only the laid plate can list. */
function holesNamed({ kind, data }: SourceFile, { plates }: Derived): Fields["references"] {
  const of = (plate: unknown) => plates.filter((laid) => laid.plate === plate);
  const sizes = (plate: unknown, id: unknown, path: Path) => ({
    path,
    id: Number(id),
    candidates: of(plate).map(({ holesInRow }) => holesInRow),
  });
  const facts = data as Record<string, unknown>;
  if (kind === "case") {
    const laid = of(facts["plate"]).find(({ holesInRow }) => holesInRow === facts["holes"]);
    const labels = laid?.holes.map(({ label }) => label) ?? [];
    const plan = facts["plan"] as readonly { hole: string }[];
    return [
      sizes(facts["plate"], facts["holes"], ["holes"]),
      ...plan.map(({ hole }, index) => ({
        path: ["plan", index, "hole"],
        id: hole,
        candidates: labels,
      })),
    ];
  }
  if (kind !== "tray") return [];
  const slots = facts["slots"] as readonly Record<string, unknown>[];
  return slots.flatMap(({ plate, holes }, index) =>
    plate === undefined ? [] : [sizes(plate, holes, ["slots", index, "holes"])],
  );
}

function fieldsOf(source: SourceFile, definitions: Definitions, derived: Derived): Fields {
  const { kind, id, data } = source;
  const { schema } = kinds[kind];
  const facts = definitions[kind].get(id);
  const named = facts ? references(kind, facts as never) : [];
  return {
    unit: (path) => {
      const field = schemaAt(schema, path, data);
      const unit = field && z.globalRegistry.get(field)?.unit;
      return [...units].find((known) => known === unit) ?? "count";
    },
    choices: (path) => {
      const field = schemaAt(schema, path, data);
      return field instanceof z.ZodEnum ? field.options.map(String) : [];
    },
    isOptional: (path) => {
      const holder = schemaAt(schema, path.slice(0, -1), data);
      if (holder instanceof z.ZodRecord) return true;
      const field = holder instanceof z.ZodObject ? holder.shape[String(path.at(-1))] : undefined;
      return field instanceof z.ZodType && field.safeParse(undefined).success;
    },
    references: [
      ...named.map(({ path, target, id: name }) => ({
        path,
        id: name,
        candidates: targets(definitions, target),
      })),
      ...holesNamed(source, derived),
    ],
  };
}

/** The definitions with one file replaced, or taken away, and what the schema says of it. */
function withSource(
  base: Definitions,
  { kind, id }: SourceFile,
  changed: SourceFile | undefined,
): { readonly definitions: Definitions; readonly findings: readonly Finding[] } {
  const own = new Map<string, unknown>(base[kind]);
  if (changed === undefined) {
    own.delete(id);
    return { definitions: { ...base, [kind]: own }, findings: [] };
  }
  const { definitions, findings } = validate([changed]);
  const facts = definitions[kind].get(id);
  if (facts) own.set(id, facts);
  return { definitions: { ...base, [kind]: own }, findings };
}

const findingKey = ({ rule, place, message }: Finding): string =>
  JSON.stringify([rule, place.file, place.path, message]);
const told = (findings: readonly Finding[]): readonly Finding[] =>
  findings.filter(({ severity }) => severity !== "note");

/** Reads a library and makes its mutants. Stops when the library itself does not hold together. */
export function openBench(root: string, given?: string, rules: readonly Rule[] = allRules): Bench {
  const read = readLibrary(root);
  const valid = validate(read.sources);
  const { catalogue, findings } = resolve(valid.definitions);
  if (!catalogue || read.findings.length + valid.findings.length + findings.length > 0)
    throw new Stop(1, "The library has stops.", "Run trayleaf check.");
  const today = given ?? newestCardDay(catalogue);
  const whole = (facts: typeof catalogue) => {
    const derived = derive(facts);
    const views = sheetViews({ catalogue: facts, derived, pictures: namedPictures, today });
    const sheets = views.filter(({ format, formats }) => format.id === formats[0]);
    return { derived, sheets };
  };
  const before = whole(catalogue);
  const known = new Set(check({ catalogue, today, ...before }, rules).map(findingKey));
  const shown = new Map(before.sheets.map((sheet) => [sheet.id, sheet]));
  const byFile = new Map(read.sources.map((source) => [source.file, source]));

  const judge = (mutant: Mutant): Outcome => {
    const source = byFile.get(mutant.file);
    if (!source) throw new Error(`No file ${mutant.file} to change`);
    const isGone = mutant.path.length === 0 && mutant.value === undefined;
    const data = isGone ? undefined : replaced(source.data, mutant.path, mutant.value);
    const made = withSource(valid.definitions, source, isGone ? undefined : { ...source, data });
    const refusals = made.findings.length > 0 ? made : resolve(made.definitions);
    if (refusals.findings.length > 0)
      return {
        mutant,
        refused: true,
        harmful: false,
        rules: [...new Set(refusals.findings.map(({ rule }) => rule))],
      };
    const facts = "catalogue" in refusals ? refusals.catalogue : undefined;
    if (!facts) throw new Error(`Nothing is left of the library after ${mutant.says}`);
    const after = whole(facts);
    const found = told(check({ catalogue: facts, today, ...after }, rules));
    const fresh = found.filter((finding) => !known.has(findingKey(finding)));
    return {
      mutant,
      refused: false,
      harmful: showsOtherFacts(shown, after.sheets),
      rules: [...new Set(fresh.map(({ rule }) => rule))],
    };
  };

  const all = read.sources.flatMap((source) =>
    mutants(source, fieldsOf(source, valid.definitions, before.derived)),
  );
  return { mutants: all, judge };
}
