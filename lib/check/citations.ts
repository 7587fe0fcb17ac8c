import type { Catalogue } from "../model/catalogue.ts";
import { definitions } from "../model/definition.ts";
import { definitionsOf } from "../model/find-definition.ts";
import type { Citation, Source } from "../model/source.ts";

/** A place that cites a document: the file, the keys that lead to the citation, and the system whose part is cited for. */
export type Cited = {
  readonly file: string;
  readonly system: string;
  readonly path: readonly (string | number)[];
  readonly citation: Citation;
};

type Kind = keyof typeof definitions;
const kinds = Object.keys(definitions) as readonly Kind[];

function* inside(value: unknown, path: Cited["path"]): Generator<Pick<Cited, "path" | "citation">> {
  if (typeof value !== "object" || value === null) return;
  for (const [key, inner] of Object.entries(value)) {
    const at = [...path, Array.isArray(value) ? Number(key) : key];
    if (key !== "source") {
      yield* inside(inner, at);
      continue;
    }
    const { fields = {}, ...citation } = inner as Source;
    yield { path: at, citation };
    for (const [field, other] of Object.entries(fields))
      yield { path: [...at, "fields", field], citation: other };
  }
}

/** Every citation of a library, field overrides among them. */
export function citations(catalogue: Catalogue): readonly Cited[] {
  return kinds.flatMap((kind) =>
    [...definitionsOf(catalogue, kind).values()].flatMap((one) =>
      [...inside(one, [])].map((found) => ({ file: one.file, system: one.system, ...found })),
    ),
  );
}
