import type { Locate } from "../model/source-file.ts";
import { frameOf, spotOf, type YamlSource } from "./yaml-source.ts";

/** A Locate over the texts of a library, by file; a file that was not read is located at its first character. */
export function locateIn(texts: ReadonlyMap<string, YamlSource>): Locate {
  return (finding) => {
    const { place } = finding;
    const source = texts.get(place.file);
    if (!source) return { ...finding, line: place.line ?? 1, column: place.column ?? 1, frame: [] };
    const spot =
      place.line === undefined
        ? spotOf(source, place)
        : { line: place.line, column: place.column ?? 1, width: 1 };
    return { ...finding, line: spot.line, column: spot.column, frame: frameOf(source.lines, spot) };
  };
}
