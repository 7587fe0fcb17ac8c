import { expect, it } from "vitest";
import { derive } from "../../lib/derive/derive.ts";
import type { Edit } from "../fixtures/catalogue-of.ts";
import { referenceLibrary } from "../fixtures/reference-library.ts";
import { change } from "./verdict-of.ts";

const tables = (...edits: Edit[]) => derive(referenceLibrary(edits)).lengthTables;
const answer = (screw: string, reading: number, ...edits: Edit[]) =>
  tables(...edits)
    .get(screw)
    ?.readings.find((one) => one.reading === reading * 1000)?.answer;

it.each([
  ["cortical-35", 16, { kind: "next", length: 18_000, over: 0 }],
  ["cortical-35", 15, { kind: "next", length: 18_000, over: 1000 }],
  ["locking-35", 16, { kind: "next", length: 16_000, over: 0 }],
  ["locking-35", 15, { kind: "next", length: 16_000, over: 1000 }],
  ["cortical-35", 48, { kind: "next", length: 50_000, over: 0 }],
  ["cortical-35", 49, { kind: "gap", shorter: 50_000, longer: 55_000, short: 1000, long: 4000 }],
  ["cortical-35", 51, { kind: "gap", shorter: 50_000, longer: 55_000, short: 3000, long: 2000 }],
  ["cortical-35", 52, { kind: "next", length: 55_000, over: 1000 }],
  ["cortical-35", 68, { kind: "next", length: 70_000, over: 0 }],
  ["cortical-35", 69, { kind: "above", longest: 70_000 }],
  ["locking-35", 10, { kind: "next", length: 10_000, over: 0 }],
  ["cancellous-40", 11, { kind: "below", shortest: 14_000 }],
  ["cancellous-40", 12, { kind: "next", length: 14_000, over: 0 }],
])("%s answers a reading of %i", (screw, reading, expected) => {
  expect(answer(screw, reading)).toEqual(expected);
});

const policy = "system/pebblefin";

it.each([
  [1, "gap"],
  [1.001, "next"],
])("tolerates an overshoot of 1 only below %f: %s", (below, kind) => {
  expect(
    answer(
      "locking-35",
      15,
      change(policy, "length_policy", "locking", "overshoot_below").to(below),
    )?.kind,
  ).toBe(kind);
});

it("reads every step of the gauge's scale", () => {
  const readings = tables(change("instrument/gauge-small", "scale", "step").to(2.5))
    .get("locking-35")
    ?.readings.map(({ reading }) => reading);
  expect([readings?.length, readings?.[0], readings?.[1], readings?.at(-1)]).toEqual([
    25, 10_000, 12_500, 70_000,
  ]);
});

it("has no table without a policy for the screw's kind", () => {
  expect([...tables(change(policy, "length_policy", "locking").to(undefined)).keys()]).toEqual([
    "cancellous-40",
    "cortical-35",
  ]);
});

it("has no table where the gauge reads something else than the policy speaks of", () => {
  expect([...tables(change("instrument/gauge-small", "reads").to("bare-depth")).keys()]).toEqual(
    [],
  );
});

it("has no table for a screw that no gauge measures", () => {
  expect(tables(change("instrument/gauge-small").to(undefined)).size).toBe(0);
});
