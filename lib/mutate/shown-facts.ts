import type { SheetView } from "../model/sheet.ts";

/** What a sheet is told apart by, not what it tells: the picture, the fingerprint, the documents and the file it comes from. */
const apart = new Set(["svg", "fingerprint", "sources", "origin"]);

/** Everything that the sheets print, by sheet and format: chains, numbers, sides, orders, cautions and the words around them, without pictures. */
export function shownFacts(sheets: readonly SheetView[]): ReadonlyMap<string, string> {
  return new Map(
    sheets.map((sheet) => [
      `${sheet.id}.${sheet.format.id}`,
      JSON.stringify(sheet, (key, value) => (apart.has(key) ? undefined : value)),
    ]),
  );
}

/** True where a sheet is there in one library only, or shows other facts. */
export function showsOtherFacts(
  a: ReadonlyMap<string, string>,
  b: ReadonlyMap<string, string>,
): boolean {
  return a.size !== b.size || [...a].some(([key, facts]) => b.get(key) !== facts);
}
