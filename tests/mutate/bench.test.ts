import { describe, expect, it } from "vitest";
import { openBench } from "../../lib/bench.ts";
import { rules } from "../../lib/check/rules.ts";
import type { Mutant } from "../../lib/model/mutation.ts";

const bench = openBench("content");
const home = "systems/pebblefin";
const mutant = (file: string, path: Mutant["path"], value?: unknown): Mutant => {
  const found = bench.mutants.find(
    (one) =>
      one.file === file && JSON.stringify([one.path, one.value]) === JSON.stringify([path, value]),
  );
  if (found === undefined) throw new Error(`No such mutant of ${file}`);
  return found;
};

describe("a mutant", () => {
  it("that no schema takes is refused, and no sheet of it is harmful", () => {
    const outcome = bench.judge(mutant(`${home}/screws/cortical-35.yaml`, ["major"], 35));
    expect(outcome).toMatchObject({ refused: true, harmful: false });
    expect(outcome.rules).toEqual(["number-is-in-its-range"]);
  });

  it("that names another part of its kind is caught by a rule and changes a sheet", () => {
    const outcome = bench.judge(
      mutant(`${home}/instruments/driver-20.yaml`, ["drive"], "hexalobular-10"),
    );
    expect(outcome).toMatchObject({ refused: false, harmful: true });
    expect(outcome.rules).toContain("chain-has-one-candidate");
  });

  it("that moves a hole changes pictures only, which are not counted", () => {
    const outcome = bench.judge(
      mutant(`${home}/plates/lower-fibula-left.yaml`, ["holes", 0, "at", 1], -6.1),
    );
    expect(outcome).toMatchObject({ refused: false, harmful: false });
  });

  it("of a file that is taken away is refused where another file names it", () => {
    expect(bench.judge(mutant(`${home}/screws/cortical-35.yaml`, [])).refused).toBe(true);
  });
});

it("gets past a library whose rule is switched off", () => {
  const blind = openBench(
    "content",
    undefined,
    rules.filter(({ id }) => id !== "tray-total-adds-up"),
  );
  const total = mutant(`${home}/trays/small-instruments.yaml`, ["total"], 31);
  expect(bench.judge(total).rules).toEqual(["tray-total-adds-up"]);
  expect(blind.judge(total)).toMatchObject({ harmful: true, rules: [] });
});

it("refuses a library that does not hold together", () => {
  expect(() => openBench("tests/broken")).toThrow(/stops/);
});
