import type { Defined, DefinitionKind, Definitions, Unread } from "../model/definition.ts";
import { definitions as kinds } from "../model/definition.ts";
import type { Finding } from "../model/finding.ts";
import type { SourceFile } from "../model/source-file.ts";
import { asSlug, slug } from "../model/text.ts";
import { findingOf } from "../model/told-rule.ts";
import { type Told, valueAt } from "./issue-words.ts";
import { validateData } from "./validate-data.ts";
import { validatingRules } from "./validating-rules.ts";

const toldOf = (file: string, { rule, path, key, ...told }: Told): Finding =>
  findingOf(validatingRules[rule], told, { file, path, ...(key ? { key } : {}) });

/** "Rename the file to locking-35.yaml." when that is a name it may have. */
const named = (id: string, what: string, ending: string): string | undefined =>
  slug.safeParse(id).success ? `${what} ${id}${ending}.` : undefined;

const top = (file: string, rule: Told["rule"], message: string, fix?: string): Finding =>
  findingOf(
    validatingRules[rule],
    { message, ...(fix === undefined ? {} : { fix }) },
    { file, path: [], line: 1, column: 1 },
  );

function idFindings(
  { file, id, kind, system }: SourceFile,
  first: SourceFile | undefined,
): Finding[] {
  const found: Finding[] = [];
  if (!slug.safeParse(id).success)
    found.push(
      top(
        file,
        "idForm",
        `Expected a file name of a-z, 0-9 and single hyphens, got "${id}"`,
        named(asSlug(id), "Rename the file to", ".yaml"),
      ),
    );
  if (system !== id && system !== "general" && !slug.safeParse(system).success)
    found.push(
      top(
        file,
        "idForm",
        `Expected a folder name of a-z, 0-9 and single hyphens, got "${system}"`,
        named(asSlug(system), "Rename the folder to", ""),
      ),
    );
  if (first)
    found.push(top(file, "idUnique", `Duplicate ${kind} id "${id}" (first at ${first.file}:1)`));
  return found;
}

/** The system a document says it belongs to: documents lie in one folder for all. */
function statedSystem(facts: object): string | undefined {
  return "system" in facts && typeof facts.system === "string" ? facts.system : undefined;
}

/** The kind that data states of itself, as an instrument's does. */
function sortOf(data: unknown): Pick<Unread, "sort"> {
  const sort = valueAt(data, ["kind"]);
  return typeof sort === "string" ? { sort } : {};
}

/** Judges every read file by the schema of its kind; the result is frozen. Units: see lib/model/measure.ts. */
export function validate(sources: readonly SourceFile[]): {
  definitions: Definitions;
  findings: Finding[];
} {
  const maps = Object.fromEntries(
    Object.keys(kinds).map((kind) => [kind, new Map<string, Defined<object>>()]),
  ) as unknown as Record<DefinitionKind, Map<string, Defined<object>>>;
  const findings: Finding[] = [];
  const refused = new Map<string, Unread>();
  const seen = new Map<string, SourceFile>();
  for (const source of [...sources].sort((a, b) =>
    a.id === b.id ? (a.file < b.file ? -1 : 1) : a.id < b.id ? -1 : 1,
  )) {
    const { kind, id, system, file, data } = source;
    const name = `${kind}/${id.toLowerCase()}`;
    const wrongId = idFindings(source, seen.get(name));
    if (!seen.has(name)) seen.set(name, source);
    findings.push(...wrongId);
    const { facts, told } = source.refused
      ? { facts: undefined, told: [] }
      : validateData(kind, data);
    findings.push(...told.map((one) => toldOf(file, one)));
    if (facts && wrongId.length === 0)
      maps[kind].set(
        id,
        Object.freeze({ ...facts, id, system: statedSystem(facts) ?? system, file }),
      );
    else
      for (const name of new Set([id, asSlug(id)]))
        refused.set(`${kind}/${name}`, { kind, system, ...sortOf(data) });
  }
  return { definitions: { ...maps, refused } as unknown as Definitions, findings };
}
