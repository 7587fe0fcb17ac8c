import type { Mutant } from "../model/mutation.ts";

type Path = readonly (string | number)[];
/** The file that a mutant changes. */
export type Origin = Pick<Mutant, "definition" | "file">;
/** A value of plain data with the keys that lead to it. */
export type Leaf = { readonly path: Path; readonly value: unknown };

/** Every value inside plain data, parents before what they hold, in the order written. */
export function leaves(data: unknown, path: Path = []): readonly Leaf[] {
  const inner: readonly (readonly [string | number, unknown])[] = Array.isArray(data)
    ? data.map((value, index) => [index, value] as const)
    : typeof data === "object" && data !== null
      ? Object.entries(data)
      : [];
  return inner.flatMap(([key, value]) => [
    { path: [...path, key], value },
    ...leaves(value, [...path, key]),
  ]);
}
