import type { Source } from "./source.ts";

type Keyed = Readonly<Record<string | number, unknown>> & {
  readonly source?: Source | undefined;
};

/** The `source` that stands in the very object to which keys lead; undefined where none does. */
export function sourceAt(
  definition: object,
  path: readonly (string | number)[],
): Source | undefined {
  const at = path.reduce<Keyed | undefined>(
    (inner, key) => inner?.[key] as Keyed | undefined,
    definition as Keyed,
  );
  return at?.source;
}
