import { describe, expect, test } from "vitest";
import { drawnPlate } from "../../../lib/compose/plate-facts.ts";
import { plateMap } from "../../../lib/draw/figures/plate-map.ts";
import { zoneSize } from "../../../lib/draw/layout/zone-size.ts";
import { textWidth } from "../../../lib/draw/text-widths.ts";
import type { PlateSide } from "../../../lib/model/figure.ts";
import type { LaidPlate } from "../../../lib/model/laid-plate.ts";
import { demo } from "../../fixtures/demo-library.ts";
import { quick } from "../../fixtures/runs.ts";
import { labelFaults } from "../label-faults.ts";
import { libraryPlates } from "../library-plates.ts";
import { mapFaults } from "../map-faults.ts";
import { mirrored } from "../mirrored.ts";
import { plates } from "../plates.ts";
import { type ReadMap, readMap } from "../read-map.ts";

const { catalogue } = demo;
const sideOf = (plate: LaidPlate): PlateSide => {
  if (!catalogue.plates.has(plate.plate))
    return { thickness: { head: 1600, shaft: 2400 }, bends: [] };
  const { thickness, bend_zones } = drawnPlate(catalogue, plate.plate);
  return { thickness, bends: bend_zones.map(({ between }) => between) };
};
const known = new WeakMap<LaidPlate, Map<number, ReadMap>>();
/** The map of a plate, read back; drawn once for all tests that ask for it. */
const drawn = (plate: LaidPlate, height = 66): ReadMap => {
  const reads = known.get(plate) ?? new Map<number, ReadMap>();
  known.set(plate, reads);
  const size = { width: 194, height };
  const read =
    reads.get(height) ?? readMap(plateMap("map", plate, size, { side: sideOf(plate) }).svg);
  reads.set(height, read);
  return read;
};
const all = [...plates, ...libraryPlates];
const plateCalled = (id: string): LaidPlate => {
  const found = all.find((one) => one.id === id);
  if (found === undefined) throw new Error(`No plate ${id}`);
  return found;
};
const regionsOf = ({ words }: ReadMap): string[] =>
  words.filter(({ what }) => what === "region").map(({ words: said }) => said);

describe("on a map with its regions, bend zones and view from the side", () => {
  test.each(all)("nothing of $id meets anything else, on high and on low paper", (plate) => {
    for (const height of quick ? [66, 40] : [80, 66, 52, 40])
      for (const one of [plate, mirrored(plate)]) {
        const read = drawn(one, height);
        expect([...labelFaults(one, read), ...mapFaults(one, read)], `${height}`).toEqual([]);
      }
  });

  test.each(quick ? libraryPlates.filter((_, index) => index % 3 === 0) : libraryPlates)(
    "nothing of $id meets anything else where a case marks holes with their order",
    (plate) => {
      const marked = plate.holes.map(({ label }) => label).slice(-6);
      const { svg } = plateMap("map", plate, { width: 178, height: 42 }, { marked });
      const read = readMap(svg);
      const faults = [...labelFaults(plate, read), ...mapFaults(plate, read)];
      expect(faults.filter((fault) => !fault.endsWith("from its hole"))).toEqual([]);
      const discs = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="2.3"/g)];
      expect(discs.length).toBe(marked.length);
      for (const { label, x: right, y: base, size } of read.labels) {
        const left = right - textWidth(label, size, 600);
        const from = (x: number, y: number, start: number): number =>
          Math.hypot(
            Math.max(start - x, 0, x - right),
            Math.max(base - size * 0.984 - y, 0, y - base - size * 0.316),
          );
        for (const [, x, y] of discs)
          expect(from(Number(x), Number(y), left), label).toBeGreaterThan(2.3);
        const hole = read.holes.find((one) => one.label === label);
        const start = marked.includes(label) ? left - 5.4 : left;
        expect(from(hole?.x ?? NaN, hole?.y ?? NaN, start), label).toBeLessThan(15);
      }
    },
  );

  test("a name whose hole lies too far from the plate's edge stands on the metal, within 15 mm and clear of edge and holes", () => {
    const plate = plateCalled("ankle-tip-hook-4");
    const read = drawn(plate, 60);
    const label = read.labels.find((one) => one.label === "H1");
    expect(label).toBeDefined();
    expect(read.leaders.some((one) => one.label === "H1")).toBe(false);
    expect([...labelFaults(plate, read), ...mapFaults(plate, read)]).toEqual([]);
  });

  test.each(all.filter(({ hooks }) => hooks))(
    "the line from the hooks' word touches a hook of $id",
    (plate) => {
      const { svg } = plateMap("map", plate, { width: 194, height: 66 });
      const [, middle = Number.NaN] =
        /class="hooks" transform="translate\([-\d.]+ ([-\d.]+)\)/.exec(svg)?.map(Number) ?? [];
      const edges = [
        ...svg.matchAll(/translate\(0 ([-\d.]+)\)" data-part="hook"[^>]*><path d="M0 (-?[\d.]+)/g),
      ].flatMap(([, place, half]) =>
        [-1, 1].map((side) => Number(place) + side * Math.abs(Number(half))),
      );
      const leader = readMap(svg).leaders.find(({ label }) => label === "hooks")?.line;
      if (leader === undefined) throw new Error("No leader");
      const gaps = [leader[1], leader[3]].flatMap((y) =>
        edges.map((edge) => Math.abs(y - middle - edge)),
      );
      expect(Math.min(...gaps)).toBeLessThan(0.1);
    },
  );

  test("a region is named with its screw holes where there is room, and not at all where the plate has one region", () => {
    expect(regionsOf(drawn(plateCalled("lower-fibula-left-7")))).toEqual([
      "head H1–H5",
      "shaft S1–S7",
    ]);
    expect(regionsOf(drawn(plateCalled("straight-stiff-7")))).toEqual([]);
  });

  test("the lines of two regions reach from end to end of the plate and part between head and shaft", () => {
    const plate = plateCalled("lower-fibula-left-7");
    const { spans, scale } = drawn(plate);
    const xs = (region: string): number[] =>
      spans.filter((span) => span.region === region).flatMap(({ line: [a, , b] }) => [a, b]);
    const [from, neck] = [Math.min(...xs("head")), Math.max(...xs("head"))];
    const [then, to] = [Math.min(...xs("shaft")), Math.max(...xs("shaft"))];
    expect((to - from) / scale).toBeCloseTo(plate.length / 1000, 1);
    expect(then - neck).toBeCloseTo(1.8, 2);
  });
});

describe("the view from the side on a map", () => {
  const wide = all.filter((plate) => drawn(plate, 110).side !== undefined);

  test("stands on high paper below every plate of the library", () => {
    expect(wide.map(({ id }) => id)).toEqual(all.map(({ id }) => id));
  });

  test.each(wide)("of $id is as long and as thick as the data says, within 0.1 mm", (plate) => {
    const side = sideOf(plate);
    const { side: body, scale } = drawn(plate, 110);
    const [xs, ys] = [0, 1].map((axis) => (body?.points ?? []).map((spot) => spot[axis] ?? 0));
    const spread = (values: readonly number[] = []): number =>
      (Math.max(...values) - Math.min(...values)) / scale;
    const { head = 0, shaft } = side.thickness;
    const both = new Set(plate.holes.map(({ region }) => region)).size > 1;
    expect(Math.abs(spread(xs) - plate.length / 1000)).toBeLessThan(0.1);
    expect(Math.abs(spread(ys) - Math.max(shaft, both ? head : 0) / 1000)).toBeLessThan(0.1);
  });

  test("stands straight below the plan, each hole's axis below its hole", () => {
    const plate = plateCalled("upper-shin-left-5");
    const { svg } = plateMap("map", plate, { width: 194, height: 110 }, { side: sideOf(plate) });
    const { holes } = readMap(svg);
    for (const { label, x } of holes) {
      const axes = [
        ...svg.matchAll(new RegExp(`<line[^>]* x1="([\\d.]+)"[^>]*data-axis="${label}"`, "g")),
      ];
      const mean = axes.reduce((sum, [, at]) => sum + Number(at), 0) / axes.length;
      expect(Math.abs(mean - x), label).toBeLessThan(0.1);
    }
  });

  test("says how thick head and shaft are, in millimetres", () => {
    const said = drawn(plateCalled("upper-shin-left-5"), 110).words.filter(
      ({ what }) => what === "thickness",
    );
    expect(said.map(({ words }) => words)).toEqual([
      "from the side: head 3.4 mm thick",
      "shaft 4.6 mm thick",
    ]);
  });

  test("is left out where the paper has no room, and the labels keep their size and the plate its scale", () => {
    const plate = plateCalled("upper-shin-left-5");
    const low = drawn(plate, 44);
    expect(low.side).toBeUndefined();
    expect(low.labels.length).toBe(plate.holes.length);
    const bare = readMap(plateMap("map", plate, { width: 194, height: 44 }).svg);
    expect(low.scale).toBe(bare.scale);
  });
});

describe("bend zones on a map", () => {
  const plate = plateCalled("straight-stiff-7");

  test("reach from rim to rim between their holes, within 0.1 mm of the data", () => {
    const { bends, scale, holes } = drawn(plate);
    const names = [...new Set(bends.map(({ name }) => name))];
    expect(names).toEqual(["S1 to S2", "S4 to S5"]);
    for (const name of names) {
      const xs = bends
        .filter((one) => one.name === name)
        .flatMap(({ points }) => points.map(([x]) => x));
      const [one, other] = name
        .split(" to ")
        .map((label) => holes.find((hole) => hole.label === label));
      const half =
        zoneSize(plate.holes[0]?.zones[0] ?? { zone: "", kind: "wire", at: [0, 0] }).along / 2000;
      const rims = [(one?.x ?? 0) + half * scale, (other?.x ?? 0) - half * scale];
      const margin = Math.min(0.8, ((rims[1] ?? 0) - (rims[0] ?? 0)) / 6);
      expect(Math.abs(Math.min(...xs) - margin - (rims[0] ?? 0))).toBeLessThan(0.1);
      expect(Math.abs(Math.max(...xs) + margin - (rims[1] ?? 0))).toBeLessThan(0.1);
    }
  });

  test("are named in the description and the facts, and only those that this length of plate has", () => {
    const side = {
      thickness: { shaft: 3300 },
      bends: [
        ["S1", "S2"],
        ["S7", "S8"],
      ] as const,
    };
    const figure = plateMap("map", plate, { width: 194, height: 66 }, { side });
    expect(figure.facts).toContainEqual(["bend zones", "S1 to S2"]);
    expect(figure.description).toContain("bend zones: S1 to S2");
    expect(readMap(figure.svg).bends.map(({ name }) => name)).toEqual(["S1 to S2", "S1 to S2"]);
  });

  test("do not stand where the plate states none", () => {
    expect(drawn(plateCalled("lower-fibula-left-7")).bends).toEqual([]);
  });
});

describe("the judge of maps", () => {
  const plate = plateCalled("lower-fibula-left-7");
  const fine = drawn(plate, 90);
  const [region, ...words] = [...fine.words].sort((a) => (a.what === "region" ? -1 : 1));
  const [label] = fine.labels;
  const [span] = fine.spans;
  if (!region || !label || !span) throw new Error("Nothing drawn");

  test("finds nothing on the map as drawn", () => {
    expect(mapFaults(plate, fine)).toEqual([]);
  });

  test.each<readonly [string, ReadMap]>([
    ["a region that is not named", { ...fine, words }],
    [
      "a region's name on a label",
      { ...fine, words: [...words, { ...region, x: label.x, y: label.y }] },
    ],
    [
      "a region's name out of the figure",
      { ...fine, words: [...words, { ...region, y: fine.height + 2 }] },
    ],
    [
      "a region's line through a label",
      { ...fine, spans: [{ ...span, line: [0, label.y - 1, 190, label.y - 1] }] },
    ],
    [
      "a label on the view from the side",
      {
        ...fine,
        side: {
          points: [
            [label.x - 2, label.y - 2],
            [label.x, label.y],
          ],
        },
      },
    ],
    [
      "a label across the plate's edge",
      { ...fine, labels: fine.labels.map((one) => ({ ...one, y: one.y + 5 })) },
    ],
    [
      "a hole in a bend zone",
      {
        ...fine,
        bends: [
          {
            name: "one",
            points: [
              [0, 0],
              [190, fine.height],
            ],
          },
        ],
      },
    ],
  ])("sees %s", (_what, map) => {
    expect(mapFaults(plate, map)).not.toEqual([]);
  });
});
