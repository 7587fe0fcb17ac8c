import fc from "fast-check";
import { expect, it } from "vitest";
import { check } from "../../lib/check/check.ts";
import { rules } from "../../lib/check/rules.ts";
import { derive } from "../../lib/derive/derive.ts";
import { editedLibrary } from "./edited-library.ts";

function said(id: string, edits: Parameters<typeof editedLibrary>[0]): string[] {
  const catalogue = editedLibrary(edits);
  return check(
    { catalogue, derived: derive(catalogue), today: "2026-10-02" },
    rules.filter((rule) => rule.id === id),
  ).map(({ message }) => message);
}

const bore = (length: number) => [
  { file: "instrument/sleeve-35", path: ["bore"], value: length / 1000 },
];

it("finds a sleeve's bore at fault exactly when it is not 0.05 to 0.20 mm wider than the drill", () => {
  fc.assert(
    fc.property(fc.integer({ min: 2500, max: 3200 }), (length) => {
      const clearance = length - 2700;
      expect(said("sleeve-guides-the-drill", bore(length)).length > 0).toBe(
        clearance < 50 || clearance > 200,
      );
    }),
    { numRuns: 60 },
  );
});

it("finds a drill's reach at fault exactly when it is short of sleeve and longest screw", () => {
  fc.assert(
    fc.property(fc.integer({ min: 100_000, max: 112_000 }), (reach) => {
      const edits = [{ file: "instrument/drill-27-pilot", path: ["reach"], value: reach / 1000 }];
      expect(said("drill-reaches-the-longest-screw", edits).length > 0).toBe(reach < 106_000);
    }),
    { numRuns: 40 },
  );
});

const spoken = (say: string) => [
  { file: "recipe/cortical-neutral", path: ["steps", 0, "say"], value: say },
];
const size = fc.integer({ min: 10, max: 99 }).map((tenths) => (tenths / 10).toFixed(1));
const noun = fc.constantFrom("drill", "screw", "sleeve", "guide", "tap", "insert", "wire");

it("accepts every size behind its noun and refuses every size without one", () => {
  fc.assert(
    fc.property(noun, size, (thing, number) => {
      expect(said("size-has-its-noun", spoken(`Take ${thing} ${number} now.`))).toEqual([]);
      expect(said("size-has-its-noun", spoken(`Take the ${number} now.`))).toHaveLength(1);
    }),
    { numRuns: 30 },
  );
});

it("notes, and only notes, a drill that public teaching pages list otherwise", () => {
  const catalogue = editedLibrary([{ file: "screw/cortical-35", path: ["pilot"], value: 2.7 }]);
  const found = check(
    { catalogue, derived: derive(catalogue), today: "2026-10-02" },
    rules.filter(({ id }) => id === "pilot-suits-the-core"),
  );
  expect(found.map(({ severity }) => severity)).toEqual(["note"]);
});

it.each(["sleeve-is-turned-in-square", "last-turns-are-by-hand"])(
  "asks only to be signed (%s) where instructions for use are cited for the steps",
  (id) => {
    const source = {
      document: "pebblefin-ifu",
      section: "Table 1",
      fields: { steps: { document: "pebblefin-ifu", section: "7.2" } },
    };
    const steps = [
      {
        id: "sleeve",
        verb: "turn-in-sleeve",
        say: "Put the sleeve in.",
        uses: { kind: "threaded-sleeve" },
      },
    ];
    const severities = (more: Parameters<typeof editedLibrary>[0]) => {
      const catalogue = editedLibrary([
        { file: "recipe/locking-through-sleeve", path: ["steps"], value: steps },
        ...more,
      ]);
      return new Set(
        check(
          { catalogue, derived: derive(catalogue), today: "2026-10-02" },
          rules.filter((rule) => rule.id === id),
        ).map(({ severity }) => severity),
      );
    };
    expect(severities([])).toEqual(new Set(["stop"]));
    expect(
      severities([{ file: "recipe/locking-through-sleeve", path: ["source"], value: source }]),
    ).toEqual(new Set(["sign"]));
  },
);
