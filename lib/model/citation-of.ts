import type { Citation, Source } from "./source.ts";

type Path = readonly (string | number)[];
type Sourced = { readonly source?: Source | undefined };

const stepInto = (value: unknown, key: string | number): unknown =>
  typeof value === "object" && value !== null
    ? (value as Readonly<Record<string | number, unknown>>)[key]
    : undefined;

/** The citation a field rests on: the override of the nearest `source` above it for the longest beginning of the field's keys ("head.diameter", else "head"), else that source itself; undefined where nothing on the way names a source. */
export function citationOf(definition: object, path: Path): Citation | undefined {
  let source: Source | undefined;
  let below: Path = path;
  let at: unknown = definition;
  for (let depth = 0; depth <= path.length; depth += 1) {
    const own = (at as Sourced | undefined)?.source;
    if (own !== undefined) {
      source = own;
      below = path.slice(depth);
    }
    at = stepInto(at, path[depth] ?? "");
  }
  const { fields = {} } = source ?? {};
  const named = below
    .map((_, index) => fields[below.slice(0, below.length - index).join(".")])
    .find((citation) => citation !== undefined);
  return named ?? source;
}
