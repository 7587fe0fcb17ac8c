import { expect, it } from "vitest";
import type { Mutant, Outcome } from "../../lib/model/mutation.ts";
import { mutationSums, percent } from "../../lib/model/mutation-sums.ts";
import { survives, tally } from "../../lib/mutate/tally.ts";
import { mutationText, survivorLines } from "../../lib/report/mutation-text.ts";

const outcome = (
  kind: Mutant["kind"],
  told: Partial<Omit<Outcome, "mutant">>,
  changed: Partial<Mutant> = {},
): Outcome => ({
  mutant: {
    kind,
    definition: "screw",
    file: "screws/a.yaml",
    path: ["core"],
    says: "2 becomes 20",
    ...changed,
  },
  refused: false,
  harmful: false,
  rules: [],
  ...told,
});
const outcomes = [
  outcome("ten-times", { refused: true, rules: ["number-is-in-its-range"] }),
  outcome("ten-times", { harmful: true, rules: ["pilot-suits-the-core"] }),
  outcome("ten-times", { harmful: true }),
  outcome("ten-times", { rules: ["slots-do-not-overlap"] }),
  outcome("order", { harmful: true }),
  outcome("order", {}),
];
const run = tally(outcomes, { library: "0", rules: "1", sample: 1 });

it("counts schema refusals apart from rule catches, and both with their denominators", () => {
  expect(run.rows).toMatchObject([
    { kind: "ten-times", mutants: 4, refused: 1, caught: 2, harmful: 2, harmfulCaught: 1 },
    { kind: "order", mutants: 2, refused: 0, caught: 0, harmful: 1, harmfulCaught: 0 },
  ]);
  expect(mutationSums(run)).toMatchObject({
    mutants: 6,
    unit_slips: 4,
    unit_slips_refused: 1,
    unit_slips_caught: 3,
    harmful: 3,
    harmful_caught: 1,
    survivors: 2,
  });
});

it("ends with one line of JSON and names survivors by file, path and change", () => {
  const lines = mutationText(run).trimEnd().split("\n");
  expect(JSON.parse(lines.at(-1) ?? "")).toEqual(mutationSums(run));
  expect(lines.filter((line) => line.startsWith("{"))).toHaveLength(1);
  expect(survivorLines(outcomes.filter(survives))).toEqual([
    "survives: screws/a.yaml core: 2 becomes 20 (number × 10)",
    "survives: screws/a.yaml core: 2 becomes 20 (neighbours in a list swapped)",
  ]);
});

it.each([
  [1999, 2000, "99.9"],
  [0, 0, "100.0"],
  [1, 3, "33.3"],
])("never rounds a share up: %i of %i is %s %%", (part, whole, expected) => {
  expect(percent(part, whole)).toBe(expected);
});
