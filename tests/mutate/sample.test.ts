import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { openBench } from "../../lib/bench.ts";
import { MutationRun, mutantKinds, type Outcome } from "../../lib/model/mutation.ts";
import { mutationSums } from "../../lib/model/mutation-sums.ts";
import { survives, tally } from "../../lib/mutate/tally.ts";
import { survivorLines } from "../../lib/report/mutation-text.ts";

/** How many mutants of each kind are judged, as far apart as the library's files allow. */
const each = 5;
let outcomes: readonly Outcome[] = [];

beforeAll(() => {
  const bench = openBench("content", "2026-11-25");
  outcomes = Object.keys(mutantKinds).flatMap((kind) => {
    const own = bench.mutants.filter((mutant) => mutant.kind === kind);
    const step = Math.max(1, Math.floor(own.length / each));
    return own
      .filter((_, index) => index % step === 0)
      .slice(0, each)
      .map(bench.judge);
  });
}, 120_000);

describe("a sample of the demo library's mutants", () => {
  it("has every kind of change in it", () => {
    const kinds = new Set(outcomes.map(({ mutant }) => mutant.kind));
    expect([...kinds]).toEqual(Object.keys(mutantKinds));
  });

  it("is caught where a unit slips, but for one in twenty at most", () => {
    const run = tally(outcomes, { library: "", rules: "", sample: each });
    const { unit_slips, unit_slips_caught } = mutationSums(run);
    expect(unit_slips_caught / unit_slips).toBeGreaterThanOrEqual(0.95);
  });

  it("is caught where a sheet would show other facts, but for one in ten at most", () => {
    const harmful = outcomes.filter(({ harmful: is }) => is);
    const survivors = outcomes.filter(survives);
    expect(survivors.length / harmful.length, survivorLines(survivors).join("\n")).toBeLessThan(
      0.1,
    );
  });
});

it("meets its goals in the run that is kept with the project", () => {
  const file = new URL("../../lib/mutate/measured.json", import.meta.url);
  const sums = mutationSums(MutationRun.parse(JSON.parse(readFileSync(file, "utf8"))));
  expect(sums.unit_slips_caught / sums.unit_slips).toBeGreaterThanOrEqual(0.99);
  expect(sums.harmful_caught / sums.harmful).toBeGreaterThanOrEqual(0.95);
});
