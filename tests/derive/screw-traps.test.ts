import { expect, it } from "vitest";
import { screwTraps } from "../../lib/derive/screw-traps.ts";
import type { Edit } from "../fixtures/catalogue-of.ts";
import { referenceLibrary } from "../fixtures/reference-library.ts";
import { change } from "./verdict-of.ts";

const said = (...edits: Edit[]) =>
  screwTraps(referenceLibrary(edits)).map(
    ({ screw, zone, head }) => `${screw} in ${zone}: ${head}`,
  );

it("names both parts of the combined opening for the screw of the other part", () => {
  expect(said()).toEqual(
    expect.arrayContaining([
      "locking-35 in oblong-35: lodges",
      "cortical-35 in threaded-35: lodges",
    ]),
  );
});

it("names screws across systems with both systems", () => {
  expect(screwTraps(referenceLibrary())).toContainEqual({
    zone: "oblong-45",
    zoneSystem: "gatepost",
    screw: "cortical-35",
    screwSystem: "pebblefin",
    head: "lodges",
  });
});

it("names no permitted screw and no screw that is too thick", () => {
  expect(said()).not.toContain("locking-35 in threaded-35: lodges");
  expect(
    said().filter(
      (line) => line.includes("threaded-27") || line.includes("wire") || line.includes("suture"),
    ),
  ).toEqual([]);
});

it.each([
  [3.499, false],
  [3.5, true],
])("lets screw 3.5 through a width of %f: %s", (through, passes) => {
  expect(
    said(change("zone/threaded-27", "through").to(through)).includes(
      "cortical-35 in threaded-27: lodges",
    ),
  ).toBe(passes);
});

it.each([
  [4.8, "falls-through"],
  [4.801, "lodges"],
])("says of a head of %f over a width of 4.8 that it %s", (diameter, head) => {
  expect(said(change("screw/locking-27", "head", "diameter").to(diameter))).toContain(
    `locking-27 in oblong-45: ${head}`,
  );
});
