import fc from "fast-check";
import { expect, test } from "vitest";
import { plateMap } from "../../../lib/draw/figures/plate-map.ts";
import { textWidth } from "../../../lib/draw/text-widths.ts";
import type { LaidPlate, LaidZone } from "../../../lib/model/laid-plate.ts";
import { runs } from "../../fixtures/runs.ts";
import { bendsOf, generatedPlate, generatedSide } from "../generated-plate.ts";
import { labelFaults } from "../label-faults.ts";
import { libraryPlates } from "../library-plates.ts";
import { mapFaults } from "../map-faults.ts";
import { mirrored } from "../mirrored.ts";
import { hole, plates } from "../plates.ts";
import { type ReadMap, readMap } from "../read-map.ts";

const paper = { width: 192, height: 66 };
const read = (plate: LaidPlate, most?: number): ReadMap =>
  readMap(plateMap("map", plate, paper, most === undefined ? {} : { most }).svg);
const known = new Map<LaidPlate, ReadMap>();
/** The map of a plate, read back; drawn once for all tests that ask for it. */
const map = (plate: LaidPlate): ReadMap => {
  const drawn = known.get(plate) ?? read(plate);
  known.set(plate, drawn);
  return drawn;
};

test.each([...plates, ...libraryPlates])(
  "distances between the holes of $id are read back within 0.1 mm of data times scale",
  (plate) => {
    const { holes, scale } = map(plate);
    expect(holes.map((hole) => hole.label)).toEqual(plate.holes.map((hole) => hole.label));
    for (const [at, hole] of holes.entries()) {
      expect([hole.dataX, hole.dataY]).toEqual(plate.holes[at]?.at);
      for (const other of holes.slice(at + 1)) {
        const drawn = Math.hypot(hole.x - other.x, hole.y - other.y);
        const data =
          (Math.hypot(hole.dataX - other.dataX, hole.dataY - other.dataY) / 1000) * scale;
        expect(Math.abs(drawn - data)).toBeLessThan(0.1);
      }
    }
  },
);

test.each([...plates, ...libraryPlates])(
  "the other side of $id has every hole mirrored exactly and no word mirrored",
  (plate) => {
    const over = mirrored(plate);
    const most = Math.min(map(plate).scale, map(over).scale);
    const { svg } = plateMap("map", over, paper, { most });
    const [one, other] = [read(plate, most), readMap(svg)];
    expect([one.scale, other.scale]).toEqual([most, most]);
    const middle = (plate.bounds.min[1] + plate.bounds.max[1]) / 2;
    for (const [at, hole] of one.holes.entries()) {
      const twin = other.holes[at];
      expect(twin?.label).toBe(hole.label);
      expect(twin?.dataX).toBe(hole.dataX);
      expect(twin?.dataY).toBe(2 * middle - hole.dataY || 0);
      expect(twin?.x).toBeCloseTo(hole.x, 2);
    }
    expect(svg).not.toMatch(/scale\(/);
    expect(other.words.map(({ words }) => words)).toContain("towards the body");
  },
);

test.each(plates)(
  "the map of $id carries the side in words, the face and the end towards the body",
  (plate) => {
    const words = map(plate).words;
    const said = (what: string) =>
      words.filter((word) => word.what === what).map((word) => word.words);
    expect(said("side")).toEqual(plate.side === "none" ? [] : [plate.side.toUpperCase()]);
    expect(said("face")).toEqual(["this face up"]);
    expect(said("proximal")).toEqual(["towards the body"]);
    expect(said("scale")[0]).toMatch(/true size$/);
  },
);

test("mirrored plates of a library have the same labels at mirrored places", () => {
  const laid = libraryPlates;
  const pairs = laid
    .filter(({ side }) => side === "left")
    .flatMap((left) => {
      const mirrored = left.id.replace("left", "right");
      const right = laid.find(({ id, length }) => id === mirrored && length === left.length);
      return right ? [{ left, right }] : [];
    });
  expect(pairs.length).toBeGreaterThan(0);
  for (const { left, right } of pairs) {
    expect(map(right).holes.map(({ label, dataX, dataY }) => [label, dataX, dataY])).toEqual(
      map(left).holes.map(({ label, dataX, dataY }) => [label, dataX, -dataY || 0]),
    );
  }
});

const generated = Number(process.env["TRAYLEAF_PLATES"] ?? runs(400));
const distribution = (values: readonly number[]): string => {
  const sorted = values.toSorted((a, b) => a - b);
  const at = (part: number): string =>
    (sorted[Math.ceil(sorted.length * part) - 1] ?? 0).toFixed(1);
  return `median ${at(0.5)}, 95 % ${at(0.95)}, 99 % ${at(0.99)}, most ${at(1)}`;
};
const widest = (plate: LaidPlate): number =>
  Math.max(...plate.holes.map(({ label }) => textWidth(label, 4.8, 600)));

test(`every label keeps its hole, its size and its distance from all else on ${generated} generated plates; only long names or more than twenty holes may ask for a higher figure`, () => {
  const times: number[] = [];
  const crowded: LaidPlate[] = [];
  fc.assert(
    fc.property(generatedPlate, generatedSide, (plate, { thickness, bent }) => {
      const side = { thickness, bends: bendsOf(plate, bent) };
      const before = process.cpuUsage();
      const { svg } = plateMap("map", plate, paper, { side });
      const { user, system } = process.cpuUsage(before);
      times.push((user + system) / 1000);
      const read = readMap(svg);
      const lost = read.words.some(({ what }) => what === "lost");
      if (!lost) expect([...labelFaults(plate, read), ...mapFaults(plate, read)]).toEqual([]);
      if (lost) expect(read.height).toBeGreaterThan(paper.height);
      if (read.height > paper.height) crowded.push(plate);
    }),
    { numRuns: generated, seed: 7, endOnFailure: true },
  );
  for (const plate of crowded)
    expect(widest(plate) > 10 || plate.holes.length > 20, plate.id).toBe(true);
  expect(crowded.length).toBeLessThanOrEqual(3 + generated * 0.005);
  console.info(
    `${times.length} maps, ms of processor time: ${distribution(times)}; ${crowded.length} too crowded for their names`,
  );
}, 3_600_000);

test("a map whose names have no room grows, says which, leaves them unlabelled for the rules to find, and does not fail", () => {
  const crowd = Array.from({ length: 24 }, (_, index) =>
    hole(
      `a very long name ${index + 1}`,
      "wire",
      6 + 3 * (index % 8),
      -4 + 4 * Math.floor(index / 8),
    ),
  );
  const [first] = plates;
  if (!first) throw new Error("no plate");
  const plate = { ...first, holes: crowd };
  const figure = plateMap("map", plate, paper);
  const read = readMap(figure.svg);
  expect(figure.height).toBeGreaterThan(paper.height);
  const missing = crowd.filter(({ label }) => !read.labels.some((one) => one.label === label));
  expect(missing.length).toBeGreaterThan(0);
  const said = read.words.find(({ what }) => what === "lost")?.words ?? "";
  for (const { label } of missing) expect(said).toContain(label);
});

test("the judge of labels sees a label moved onto a hole, lost, shrunk or out of the figure", () => {
  const plate = plates[0] as LaidPlate;
  const fine = map(plate);
  const [first, ...rest] = fine.labels;
  const [hole] = fine.holes;
  if (!first || !hole) throw new Error("nothing drawn");
  expect(labelFaults(plate, fine)).toEqual([]);
  expect(labelFaults(plate, { ...fine, labels: rest })).not.toEqual([]);
  expect(
    labelFaults(plate, { ...fine, labels: [{ ...first, x: hole.x, y: hole.y }, ...rest] }),
  ).not.toEqual([]);
  expect(labelFaults(plate, { ...fine, labels: [{ ...first, size: 3 }, ...rest] })).not.toEqual([]);
  expect(labelFaults(plate, { ...fine, labels: [{ ...first, y: -3 }, ...rest] })).not.toEqual([]);
});

test("the same plate gives the same bytes", () => {
  for (const plate of plates)
    expect(plateMap("map", plate, paper).svg).toBe(plateMap("map", plate, paper).svg);
});

test("marked holes carry a ring and their order", () => {
  const plate = plates[1] as LaidPlate;
  const svg = plateMap("map", plate, paper, { marked: ["S2", "H3"] }).svg;
  expect(svg.match(/stroke-width="0.7"[^>]*rx=|rx="[^"]*"[^>]*stroke-width="0.7"/g)).toHaveLength(
    2,
  );
  expect(labelFaults(plate, readMap(svg))).toEqual([]);
});

test("a zone is drawn as large as its data says", () => {
  const zone: LaidZone = {
    zone: "wide",
    kind: "plain-round",
    at: [20_000, 0],
    through: 5000,
    seat: 9000,
  };
  const [plate] = plates;
  if (!plate) throw new Error("no plate");
  const holes = [
    {
      label: "S1",
      opening: "wide",
      kind: "plain-round",
      region: "shaft",
      at: zone.at,
      zones: [zone],
    } as const,
  ];
  const figure = plateMap("map", { ...plate, holes }, paper);
  const { scale } = readMap(figure.svg);
  const radii = [...figure.svg.matchAll(/ r="([\d.]+)"/g)].map(([, radius]) => Number(radius));
  expect(radii).toContain(Math.round(4.5 * scale * 1000) / 1000);
  expect(radii).toContain(Math.round(2.5 * scale * 1000) / 1000);
});

test("a map says in words which side a plate is for, which end lies towards the body and where it may be bent", () => {
  const row = ["S1", "S2", "S3"].map((label, index) => hole(label, "plain-oblong", 10 * index, 0));
  const [bar] = plates;
  if (bar === undefined) throw new Error("no plate");
  const { holes: _, ...body } = bar;
  const said = (plate: Partial<LaidPlate>, bends: readonly (readonly [string, string])[] = []) =>
    plateMap("map", { ...body, holes: row, ...plate }, paper, {
      side: { thickness: { shaft: 3000 }, bends },
    });
  expect(said({ side: "none", proximal: "start" }).description).toMatch(
    /^Seen from its upper face, no side; the left end lies towards the body\. /,
  );
  expect(said({ side: "left", proximal: "end" }).description).toMatch(
    /^Seen from its upper face, left side; the right end lies towards the body\. /,
  );
  const bends = (figure: ReturnType<typeof said>) =>
    figure.facts?.filter(([what]) => what === "bend zones");
  expect(bends(said({}))).toEqual([]);
  expect(bends(said({}, [["S1", "S2"]]))).toEqual([["bend zones", "S1 to S2"]]);
});
