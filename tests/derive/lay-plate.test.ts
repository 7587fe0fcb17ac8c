import fc from "fast-check";
import { expect, it } from "vitest";
import { derive } from "../../lib/derive/derive.ts";
import { layPlate } from "../../lib/derive/lay-plate.ts";
import { known } from "../../lib/model/catalogue.ts";
import type { Edit } from "../fixtures/catalogue-of.ts";
import { referenceLibrary } from "../fixtures/reference-library.ts";
import { change } from "./verdict-of.ts";

const plate = "plate/lower-fibula-left";
const lay = (id: string, holes: number, edits: readonly Edit[] = []) => {
  const catalogue = referenceLibrary(edits);
  return layPlate(known(catalogue.plates, id), holes, catalogue);
};
const left = (holes: number, ...edits: Edit[]) => lay("lower-fibula-left", holes, edits);

it("lays every plate in every length", () => {
  expect(derive(referenceLibrary()).plates.map(({ id }) => id)).toEqual([
    "lower-fibula-left-3",
    "lower-fibula-left-5",
    "lower-fibula-right-3",
    "lower-fibula-right-5",
  ]);
});

it("puts the far end the tail beyond the last hole, and stretches the outline with it", () => {
  expect(left(3).outline).toEqual({
    start: [0, -6000],
    segments: [
      { line: [54_000, -5000] },
      { line: [54_000, 5000] },
      { line: [0, 6000] },
      { line: [0, -6000] },
    ],
  });
  expect([left(5).length, left(5).statedLength]).toEqual([80_000, 80_000]);
});

it("reads a curve's first control point in the frame of the node before", () => {
  const outline = change(plate, "outline").to([
    { at: [0, -6] },
    { from: "end", at: [-2, -6] },
    {
      from: "end",
      at: [-2, 6],
      curve: [
        [0, -6],
        [0, 6],
      ],
    },
    {
      at: [0, 6],
      curve: [
        [-10, 6],
        [8, 5],
      ],
    },
  ]);
  expect(left(3, outline).outline.segments.slice(1, 3)).toEqual([
    {
      curve: [
        [54_000, -6000],
        [54_000, 6000],
        [52_000, 6000],
      ],
    },
    {
      curve: [
        [44_000, 6000],
        [8000, 5000],
        [0, 6000],
      ],
    },
  ]);
});

it("orders head holes, the row, then wires", () => {
  const wire = change(plate, "holes", 2).to({
    label: "K1",
    opening: "wire",
    from: "end",
    at: [-4, 0],
    region: "head",
  });
  const laid = left(3, wire).holes;
  expect(laid.map(({ label }) => label)).toEqual(["H1", "H2", "S1", "S2", "S3", "K1"]);
  expect(laid.at(-1)).toEqual({
    label: "K1",
    opening: "wire",
    kind: "wire",
    region: "head",
    at: [50_000, 0],
    zones: [{ zone: "wire-16", kind: "wire", at: [50_000, 0], through: 1700 }],
  });
});

it("places a combined opening's threaded part towards the end it states", () => {
  const zones = (end: string, proximal: string) => {
    const hole = left(
      3,
      change(plate, "row", "threaded_end").to(end),
      change(plate, "proximal").to(proximal),
    ).holes.find(({ label }) => label === "S1");
    return hole?.zones.map(({ kind, at }) => [kind, at[0]]);
  };
  expect(zones("proximal", "start")).toEqual([
    ["threaded", 17_500],
    ["plain-oblong", 22_500],
  ]);
  expect(zones("proximal", "end")).toEqual([
    ["threaded", 22_500],
    ["plain-oblong", 17_500],
  ]);
  expect(zones("distal", "end")).toEqual([
    ["threaded", 17_500],
    ["plain-oblong", 22_500],
  ]);
});

it.each([
  ["away-from-middle", ["distal", "distal", "proximal", "proximal", "proximal"]],
  ["towards-middle", ["proximal", "proximal", "distal", "distal", "distal"]],
])("settles %s for each hole, the middle one with the half towards the body", (end, expected) => {
  const holes = left(5, change(plate, "row", "threaded_end").to(end)).holes.filter(({ label }) =>
    label.startsWith("S"),
  );
  expect(holes.map(({ threadedEnd }) => threadedEnd)).toEqual(expected);
});

it("lets a single hole differ from its row", () => {
  const holes = left(3, change(plate, "row", "exceptions").to({ S2: "distal" })).holes;
  expect(holes.slice(2).map(({ threadedEnd }) => threadedEnd)).toEqual([
    "proximal",
    "distal",
    "proximal",
  ]);
});

it("mirrors every hole across the plate and keeps its label, opening and place along it", () => {
  const across = fc.integer({ min: -30_000, max: 30_000 }).map((y) => y / 1000);
  fc.assert(
    fc.property(across, across, (y, slope) => {
      const edits = [
        change(plate, "holes", 0, "at").to([5, y]),
        change(plate, "row", "first").to([20, slope]),
        change(plate, "outline", 0, "at").to([0, slope]),
      ];
      const [own, other] = [
        lay("lower-fibula-left", 3, edits),
        lay("lower-fibula-right", 3, edits),
      ];
      expect(other.holes).toEqual(
        own.holes.map((hole) => ({
          ...hole,
          at: [hole.at[0], 0 - hole.at[1]],
          zones: hole.zones.map((zone) => ({ ...zone, at: [zone.at[0], 0 - zone.at[1]] })),
        })),
      );
      expect([other.bounds.min[1], other.bounds.max[1], other.length]).toEqual([
        0 - own.bounds.max[1],
        0 - own.bounds.min[1],
        own.length,
      ]);
      expect([other.side, own.side]).toEqual(["right", "left"]);
    }),
    { numRuns: 40 },
  );
});

it("copies hooks and keeps their numbers", () => {
  const hooks = { count: 2, depth: 5.5, spread: 7, engages: "Over the tip.", at: "start" };
  expect(left(3, change(plate, "hooks").to(hooks)).hooks).toEqual({
    count: 2,
    depth: 5500,
    spread: 7000,
    at: "start",
  });
});
