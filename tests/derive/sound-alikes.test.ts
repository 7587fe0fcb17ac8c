import { expect, it } from "vitest";
import { derive } from "../../lib/derive/derive.ts";
import { soundAlikes } from "../../lib/derive/sound-alikes.ts";
import { referenceLibrary } from "../fixtures/reference-library.ts";
import { change } from "./verdict-of.ts";

const mm = (numbers: readonly number[]) => numbers.map((number) => number * 1000);

it.each([
  ["en", [13, 14, 30, 50], [[13, 30]]],
  ["en", [13, 31, 15], []],
  ["de", [24, 42], [[24, 42]]],
  ["xx", [13, 30], []],
] as const)("in %s names of %j the pairs %j", (language, numbers, expected) => {
  expect(soundAlikes(language, mm(numbers))).toEqual(expected.map(mm));
});

it("counts a reading that can be called, though no screw of the rack has that length", () => {
  const { soundAlikes: pairs } = derive(referenceLibrary());
  expect(pairs.get("locking-35")).toContainEqual(mm([13, 30]));
});

it("counts no reading that the gauge does not show", () => {
  const shorter = change("instrument/gauge-small", "scale", "from").to(14);
  expect(derive(referenceLibrary([shorter])).soundAlikes.get("locking-35")).not.toContainEqual(
    mm([13, 30]),
  );
});
