import { expect, test } from "vitest";
import { coverOf } from "../../../lib/compose/trace/covered.ts";

test.each([
  ["the very words", "drill 2.7", true],
  ["other case and a hard space", "Drill\u00a02.7", true],
  ["a beginning that the number runs on from", "drill 2", false],
  ["another number", "drill 2.5", false],
  ["a bare number inside a longer text", "2.7", false],
])("A printed number is covered by %s only.", (_title, words, covered) => {
  const cover = coverOf(["sleeve 3.5, drill 2.7"]);
  cover.cover("sleeve 3.5");
  expect(cover.cover(words)).toBe(covered);
  expect(cover.untold()).toEqual(covered ? [] : ["sleeve 3.5, drill 2.7"]);
});

test("A bare number covers a text that is nothing else.", () => {
  const cover = coverOf(["16", "screw 16"]);
  expect(cover.cover("16")).toBe(true);
  expect(cover.untold()).toEqual(["screw 16"]);
});
