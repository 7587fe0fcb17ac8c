import type { Source } from "./source.ts";

/** Ids of the documents a source names, that of the whole file first, each once. */
export function citedDocuments(source: Source | undefined): readonly string[] {
  if (source === undefined) return [];
  const { document, fields = {} } = source;
  return [...new Set([document, ...Object.values(fields).map((field) => field.document)])];
}
