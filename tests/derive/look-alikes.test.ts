import { expect, it } from "vitest";
import { derive } from "../../lib/derive/derive.ts";
import type { Edit } from "../fixtures/catalogue-of.ts";
import { referenceLibrary } from "../fixtures/reference-library.ts";
import { change } from "./verdict-of.ts";

const alike = (...edits: Edit[]) => derive(referenceLibrary(edits)).lookAlikes;
const pairOf = (a: string, b: string, ...edits: Edit[]) =>
  alike(...edits).find((pair) => pair.a === a && pair.b === b);
const tell = (a: string, b: string, ...edits: Edit[]) => pairOf(a, b, ...edits)?.tells;

it("tells drills apart by their rings, from either side", () => {
  expect(alike()).toContainEqual({
    a: "drill-25",
    b: "drill-27-pilot",
    what: "drill",
    tells: ["2 rings", "3 rings"],
    atAGlance: false,
    near: "tray",
    score: 50,
  });
});

it("tells drills of as many rings apart by their length", () => {
  expect(tell("drill-25", "drill-27-gliding")).toEqual(["170 mm long", "108 mm long"]);
});

it.each([
  [2.8, true],
  [2.801, false],
])("takes drill 2.5 and a drill of %f for alike: %s", (diameter, isAlike) => {
  expect(
    tell(
      "drill-25",
      "drill-27-gliding",
      change("instrument/drill-27-gliding", "diameter").to(diameter),
    ) !== undefined,
  ).toBe(isAlike);
});

it("takes anything of one kind with one mark for alike", () => {
  expect(tell("sleeve-27", "sleeve-35", change("instrument/sleeve-27", "mark").to("3.5"))).toEqual([
    "head thread 2.7",
    "head thread 3.5",
  ]);
});

it("says so where nothing tells two apart", () => {
  const twin = {
    kind: "drill",
    name: "drill 2.5 again",
    mark: "2.5",
    diameter: 2.5,
    use: "pilot",
    length: 170,
    reach: 132,
    coupling: "drill-small",
    bands: 2,
    source: { document: "pebblefin-ifu", section: "Table 1" },
  };
  const pair = pairOf("drill-25", "drill-25-b", change("instrument/drill-25-b").to(twin));
  expect(pair).toBeDefined();
  expect(pair?.tells).toBeUndefined();
});

it("names limiters of one shaft, screws of one size, and the two sides of a plate", () => {
  expect(tell("limiter-09", "limiter-16")).toEqual(['etched "0.9"', 'etched "1.6"']);
  expect(tell("cortical-35", "locking-35")).toEqual(["spherical head", "threaded head"]);
  expect(tell("lower-fibula-left", "lower-fibula-right")).toEqual([
    'etched "LF L"',
    'etched "LF R"',
  ]);
});

const shell = (width: number, stiffness: string) =>
  change("plate/shell").to({
    name: "thin shell",
    mark: "TS",
    family: "shell",
    side: "none",
    stiffness,
    thickness: { shaft: 1.2 },
    variants: [{ holes: 3, length: 54 }],
    proximal: "end",
    end_cue: "the narrow end",
    up_face: "The etched face lies up.",
    outline: [
      { at: [0, 0] },
      { from: "end", at: [0, 0] },
      { from: "end", at: [0, width] },
      { at: [0, width] },
    ],
    tail: 8,
    row: { prefix: "S", opening: "p35", first: [20, 6], pitch: 13, region: "shaft" },
    source: { document: "pebblefin-ifu", section: "Table 1" },
  });

it.each([
  [10.8, "thin-shell", ["thickness 2.4 mm", "thickness 1.2 mm"]],
  [10.799, "thin-shell", undefined],
  [12, "stiff", undefined],
])("of a plate 12 wide and one %f wide that is %s says: %s", (width, stiffness, expected) => {
  expect(tell("lower-fibula-left", "shell", shell(width, stiffness))).toEqual(expected);
});

it("names each pair once", () => {
  const names = alike(shell(12, "thin-shell")).map(({ a, b }) => [a, b].sort().join(" "));
  expect(new Set(names).size).toBe(names.length);
});

it("ranks a drill that only its rings tell above one that its length tells at a glance", () => {
  const [rings, length] = [
    pairOf("drill-25", "drill-27-pilot"),
    pairOf("drill-25", "drill-27-gliding"),
  ];
  expect([rings?.atAGlance, length?.atAGlance]).toEqual([false, true]);
  expect(rings?.score).toBeGreaterThan(length?.score ?? 100);
});

it.each([
  [2.8, 62],
  [2.801, 54],
])("takes drills of 2.5 and %f mm for one width: score %i", (diameter, score) => {
  const mark = change("instrument/drill-25", "mark").to("2.7");
  const wide = change("instrument/drill-27-pilot", "diameter").to(diameter);
  const pilot = change("screw/locking-35", "pilot").to(diameter);
  expect(pairOf("drill-25", "drill-27-pilot", mark, wide, pilot)?.score).toBe(score);
});
