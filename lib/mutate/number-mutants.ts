import type { Mutant, MutantKind } from "../model/mutation.ts";
import type { Leaf, Origin } from "./leaves.ts";

/** What a number counts or measures; undefined for one that is neither. */
export type Unit = "mm" | "N·m" | "°" | "count";

const written = (value: number): number => Math.round(value * 1e4) / 1e4;
const isWhole = Number.isInteger;

type Slip = { readonly kind: MutantKind; readonly to: (value: number) => number };
const tens: readonly Slip[] = [
  { kind: "ten-times", to: (value) => value * 10 },
  { kind: "a-tenth", to: (value) => value / 10 },
];
const inches: readonly Slip[] = [
  { kind: "inch-times", to: (value) => value * 25.4 },
  { kind: "inch-over", to: (value) => value / 25.4 },
];
const tenths: readonly Slip[] = [
  { kind: "tenth-more", to: (value) => value + 0.1 },
  { kind: "tenth-less", to: (value) => value - 0.1 },
  { kind: "fifth-more", to: (value) => value + 0.2 },
  { kind: "fifth-less", to: (value) => value - 0.2 },
];
const ones: readonly Slip[] = [
  { kind: "one-more", to: (value) => value + 1 },
  { kind: "one-less", to: (value) => value - 1 },
];
const slips: Readonly<Record<Unit, readonly Slip[]>> = {
  mm: [...tens, ...inches, ...tenths],
  N·m: [...tens, ...tenths],
  "°": [...tens, ...ones],
  count: [...tens, ...ones],
};

/** Slips of unit, digit and reading of one number in the unit it is written in; those that change nothing, or make a fraction of a count, are left out. */
export function numberMutants(from: Origin, { path, value }: Leaf, unit: Unit): readonly Mutant[] {
  if (typeof value !== "number") return [];
  return slips[unit].flatMap(({ kind, to }): readonly Mutant[] => {
    const changed = written(to(value));
    if (changed === value || (unit === "count" && !isWhole(changed))) return [];
    const isGeneration = String(path.at(-1)).startsWith("generation") && kind.startsWith("one");
    return [
      {
        kind: isGeneration ? "generation" : kind,
        ...from,
        path,
        value: changed,
        says: `${value} becomes ${changed}`,
      },
    ];
  });
}
