import type { Catalogue } from "../model/catalogue.ts";

/** A text that a publisher wrote and a reader meets, with its place. */
export type WrittenText = {
  readonly file: string;
  readonly path: readonly (string | number)[];
  readonly text: string;
};

/** Keys whose text is not read out to anyone: identities, and words that a glossary entry or the publisher warns of. */
const silent = new Set([
  "id",
  "system",
  "file",
  "mark",
  "source",
  "instead_of",
  "mirror_of",
  "family",
  "thread",
  "drive",
  "coupling",
  "avoid",
  "rule",
  "found_in",
  "at",
  "finding",
]);

function* within(
  file: string,
  path: readonly (string | number)[],
  value: unknown,
): Generator<WrittenText> {
  if (typeof value === "string") yield { file, path, text: value };
  else if (Array.isArray(value))
    for (const [index, one] of value.entries()) yield* within(file, [...path, index], one);
  else if (typeof value === "object" && value !== null) {
    for (const [key, one] of Object.entries(value))
      if (!silent.has(key)) yield* within(file, [...path, key], one);
  }
}

/** Every text of the library, definition by definition. */
export function* writtenTexts(catalogue: Catalogue): Generator<WrittenText> {
  const { publisher, interfaces, documents: _titles, ...kinds } = catalogue;
  yield* within(publisher.file, [], publisher);
  yield* within(interfaces.file, [], interfaces);
  for (const map of Object.values(kinds))
    for (const definition of map.values()) yield* within(definition.file, [], definition);
}

/** The texts that are spoken or printed as sentences: technique and procedure steps, cautions, notes. */
export function* spokenTexts(catalogue: Catalogue): Generator<WrittenText> {
  const { recipes, procedures, cautions, mishaps } = catalogue;
  for (const map of [recipes, procedures, cautions, mishaps]) {
    for (const definition of map.values()) {
      for (const found of within(definition.file, [], definition)) {
        const key = found.path.findLast((part) => typeof part === "string");
        if (["name", "phrase", "say", "when", "text", "why", "acts"].includes(String(key)))
          yield found;
      }
    }
  }
}
