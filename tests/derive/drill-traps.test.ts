import { expect, it } from "vitest";
import { derive } from "../../lib/derive/derive.ts";
import type { Edit } from "../fixtures/catalogue-of.ts";
import { referenceLibrary } from "../fixtures/reference-library.ts";
import { change } from "./verdict-of.ts";

const traps = (...edits: Edit[]) => derive(referenceLibrary(edits)).drillTraps;

it("names the drills that pass a sleeve made for another, the closest first", () => {
  expect(traps().filter(({ through }) => through === "sleeve-35")).toEqual([
    { drill: "drill-27-gliding", through: "sleeve-35", belongs: ["drill-27-pilot"], play: 100 },
    { drill: "drill-25", through: "sleeve-35", belongs: ["drill-27-pilot"], play: 300 },
    { drill: "drill-20", through: "sleeve-35", belongs: ["drill-27-pilot"], play: 800 },
  ]);
});

it("names them for inserts and both kinds of guide too", () => {
  expect(new Set(traps().map(({ through }) => through))).toEqual(
    new Set(["sleeve-35", "guide-25", "insert-35-25", "guide-35-gliding"]),
  );
});

it("has the least play first", () => {
  const plays = traps().map(({ play }) => play);
  expect(plays).toEqual([...plays].sort((a, b) => a - b));
});

it.each([
  [2.8, 1],
  [2.801, 0],
])("counts a drill of %f in a bore of 2.8 as passing %i time", (diameter, times) => {
  const found = traps(change("instrument/drill-27-gliding", "diameter").to(diameter)).filter(
    ({ drill, through }) => drill === "drill-27-gliding" && through === "sleeve-35",
  );
  expect(found).toHaveLength(times);
});
