import { type DefinitionKind, type DefinitionOf, definitions } from "../model/definition.ts";
import { nearestName } from "../model/nearest-name.ts";
import { issueWords, type Told, valueAt } from "./issue-words.ts";
import { branch, keysOf, schemaAt } from "./schema-at.ts";

/** The typed facts when the data gives them, and everything that is wrong with it. */
export type ValidatedData<K extends DefinitionKind> = {
  readonly facts?: DefinitionOf<K>;
  readonly told: readonly Told[];
};

function frozen<T>(value: T): T {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}

/** A missing key is not told beside the misspelt key that stands for it. */
function withoutMisspelt(told: readonly Told[]): Told[] {
  return told.filter(({ rule, path }) => {
    if (rule !== "keyPresent") return true;
    const parent = JSON.stringify(path.slice(0, -1));
    const beside = told.filter(
      (other) => other.rule === "keyKnown" && JSON.stringify(other.path.slice(0, -1)) === parent,
    );
    return !beside.some(
      (other) => nearestName(String(other.path.at(-1)), [String(path.at(-1))]) !== undefined,
    );
  });
}

function withoutUnknownKeys(data: unknown, told: readonly Told[]): unknown {
  const copy = structuredClone(data);
  for (const { path } of told) {
    const holder = valueAt(copy, path.slice(0, -1));
    if (typeof holder === "object" && holder !== null)
      delete (holder as Record<string, unknown>)[String(path.at(-1))];
  }
  return copy;
}

/** Judges one definition's data by its kind. When only unknown keys are wrong the rest is still given, so that later stages can judge it too. */
export function validateData<K extends DefinitionKind>(kind: K, data: unknown): ValidatedData<K> {
  const schema = definitions[kind].schema;
  const chosen = branch(schema, data);
  const strict = keysOf(chosen).length > 0 ? (chosen as typeof schema) : schema;
  const first = strict.safeParse(data);
  if (first.success) return { facts: frozen(first.data as DefinitionOf<K>), told: [] };
  if (typeof data !== "object" || data === null || Array.isArray(data)) {
    return { told: [{ rule: "type", message: "Expected keys with values", path: [] }] };
  }
  const told = withoutMisspelt(
    first.error.issues.flatMap((issue) => issueWords(kind, strict, data, issue)),
  );
  if (!told.every(({ rule }) => rule === "keyKnown")) return { told };
  const rest = strict.safeParse(withoutUnknownKeys(data, told));
  return rest.success && schemaAt(strict, [], data)
    ? { facts: frozen(rest.data as DefinitionOf<K>), told }
    : { told };
}
