import { expect, test } from "vitest";
import { unparted } from "../../lib/compose/unparted.ts";

test("keeps a size with its noun and breaks only between parts", () => {
  expect(unparted("Screw 3.5 cortical: guide 2.5 offset, drill 2.5").split(" ")).toEqual([
    "Screw\u00a03.5\u00a0cortical:",
    "guide\u00a02.5\u00a0offset,",
    "drill\u00a02.5",
  ]);
});
