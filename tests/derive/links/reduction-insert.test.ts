import { expect, it } from "vitest";
import { change, reasonsOf } from "../verdict-of.ts";

it.each([
  [3.501, ["outside 3.501 is 0.001 wider than the gliding hole 3.5; 0 to 0.20 is asked"]],
  [3.5, []],
  [3.3, []],
  [3.299, ["outside 3.299 leaves 0.201 in the gliding hole 3.5; 0 to 0.20 is asked"]],
])("judges an outside of %f in the gliding hole 3.5", (outer, because) => {
  expect(
    reasonsOf("lag", "insert", "insert-35-25", [
      change("instrument/insert-35-25", "outer").to(outer),
    ]),
  ).toEqual(because);
});

it.each([
  [2.549, 1],
  [2.55, 0],
  [2.7, 0],
  [2.701, 1],
])("judges a bore of %f over drill 2.5 with %i faults", (bore, faults) => {
  expect(
    reasonsOf("lag", "insert", "insert-35-25", [
      change("instrument/insert-35-25", "bore").to(bore),
    ]),
  ).toHaveLength(faults);
});
