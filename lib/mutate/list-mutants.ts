import type { Mutant, MutantKind } from "../model/mutation.ts";
import type { Leaf, Origin } from "./leaves.ts";

const named = (value: unknown): string => JSON.stringify(value).slice(0, 60);
const removals: Readonly<Record<string, MutantKind>> = {
  steps: "step-removed",
  cautions: "caution-removed",
  required_cautions: "caution-removed",
};

/** Each entry of a list removed, and each pair of neighbours that differ swapped. */
export function listMutants(from: Origin, { path, value: list }: Leaf): readonly Mutant[] {
  if (!Array.isArray(list)) return [];
  const kind = removals[String(path.findLast((key) => typeof key === "string"))] ?? "entry-removed";
  const removed = list.map((entry, index): Mutant => {
    const value = list.filter((_, other) => other !== index);
    return { ...from, kind, path, value, says: `without ${named(entry)}` };
  });
  const swapped = list.slice(1).flatMap((entry, index): readonly Mutant[] => {
    const before = list[index];
    if (JSON.stringify(before) === JSON.stringify(entry)) return [];
    const value = list.with(index, entry).with(index + 1, before);
    return [
      { ...from, kind: "order", path, value, says: `${named(entry)} before ${named(before)}` },
    ];
  });
  return [...removed, ...swapped];
}
