import fc from "fast-check";
import type { LaidHole, LaidPlate, OutlineSegment, Point } from "../../lib/model/laid-plate.ts";
import { combined, hole, plate } from "./plates.ts";

/** Whether no two holes lie within half a millimetre of one another. */
function apart({ holes }: LaidPlate): boolean {
  const circles = holes.flatMap((one) =>
    one.zones.map((zone) => ({
      label: one.label,
      at: zone.at,
      r:
        ((zone.seat ?? zone.through ?? 0) +
          (zone.slot ?? 0) -
          (zone.slot ? (zone.through ?? 0) : 0)) /
        2,
    })),
  );
  return circles.every((a) =>
    circles.every(
      (b) =>
        a.label === b.label || Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1]) > a.r + b.r + 500,
    ),
  );
}

type Letters = "head" | "shaft" | "wire" | "suture";

type Naming = Readonly<Record<Letters, string>>;

/** What holes are called, by a letter, three letters or a word of three languages, with up to two digits behind and up to 24 mm wide; a library's own names are mostly short. */
const namings: fc.Arbitrary<Naming> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.constantFrom<Naming[]>(
      { head: "H", shaft: "S", wire: "W", suture: "U" },
      { head: "K", shaft: "M", wire: "D", suture: "N" },
      { head: "Q", shaft: "O", wire: "G", suture: "V" },
    ),
  },
  {
    weight: 2,
    arbitrary: fc.constantFrom<Naming[]>(
      { head: "HEA", shaft: "SHA", wire: "WIR", suture: "SUT" },
      { head: "KOM", shaft: "MWM", wire: "DWM", suture: "NAM" },
    ),
  },
  {
    weight: 2,
    arbitrary: fc.constantFrom<Naming[]>(
      { head: "head ", shaft: "shaft ", wire: "wire ", suture: "suture " },
      { head: "Kopf ", shaft: "Schaft ", wire: "Draht ", suture: "Naht " },
      { head: "tête ", shaft: "tige du ", wire: "broche ", suture: "suture " },
    ),
  },
);

const kinds = ["threaded", "plain-round", "plain-oblong", "combined"] as const;
const round = ["threaded", "plain-round"] as const;
const tenths = (most: number): fc.Arbitrary<number> =>
  fc.integer({ min: -10 * most, max: 10 * most }).map((value) => value / 10);

const um = (x: number, y: number): Point => [Math.round(x * 1000), Math.round(y * 1000)];
const curve = (
  [ax, ay]: readonly [number, number],
  [bx, by]: readonly [number, number],
  [x, y]: readonly [number, number],
): OutlineSegment => ({ curve: [um(ax, ay), um(bx, by), um(x, y)] });

const shape = fc.record({
  /** Holes of the shaft, millimetres between them, whether every other one lies off the middle line. */
  row: fc.integer({ min: 2, max: 15 }),
  pitch: fc.integer({ min: 11, max: 17 }),
  stagger: fc.constantFrom(0, 0, 2.5),
  kind: fc.constantFrom(...kinds),
  headHoles: fc.array(fc.constantFrom(...round), { minLength: 1, maxLength: 6 }),
  wires: fc.integer({ min: 0, max: 2 }),
  sutures: fc.integer({ min: 0, max: 2 }),
  /** Half the head's breadth, and how far to one side it lies off the shaft. */
  breadth: fc.integer({ min: 9, max: 15 }),
  lean: tenths(3),
  /** How far the edges bulge out or in, and how far the shaft's outline is bowed. */
  bulges: fc.array(tenths(3), { minLength: 4, maxLength: 4 }),
  bow: tenths(4),
  taper: fc.integer({ min: 4, max: 7 }),
  jitter: fc.array(tenths(0.8), { minLength: 12, maxLength: 12 }),
});

const words = fc.record({
  naming: namings,
  side: fc.constantFrom("left" as const, "right" as const, "none" as const),
  proximal: fc.constantFrom("start" as const, "end" as const),
  hooks: fc.integer({ min: 0, max: 2 }),
});

type Shape = typeof shape extends fc.Arbitrary<infer T> ? T : never;
type Words = typeof words extends fc.Arbitrary<infer T> ? T : never;

function drawn(form: Shape, { naming, side, proximal, hooks }: Words): LaidPlate {
  const { row, pitch, stagger, kind, headHoles, breadth, lean, bulges, bow, taper, jitter } = form;
  const off = (index: number): number => jitter[index % jitter.length] ?? 0;
  const bulge = (index: number): number => bulges[index] ?? 0;
  const start = 14 + Math.ceil(headHoles.length / 2) * 10;
  const step = Math.max(pitch, kind === "combined" ? 15 : 11);
  const end = start + (row - 1) * step + 8;
  const bowed = (x: number): number => {
    const t = (x - start) / Math.max(1, end - start);
    return t < 0 ? 0 : 4 * bow * t * (1 - t);
  };
  const head: LaidHole[] = headHoles.map((part, index) => {
    const [column, line] = [Math.floor(index / 2), index % 2];
    const x = 6 + column * 10 + off(index);
    const y = lean + (line === 0 ? -1 : 1) * (breadth - 5) + off(index + 3) / 2;
    return hole(`${naming.head}${index + 1}`, part, x, y, "head");
  });
  const shaft: LaidHole[] = Array.from({ length: row }, (_, index) => {
    const label = `${naming.shaft}${index + 1}`;
    const x = start + index * step;
    const y = bowed(x) + (index % 2 === 0 ? stagger : -stagger) / 2;
    if (kind !== "combined") return hole(label, kind, x, y);
    return combined(label, x, y, index % 2 === 0 ? "proximal" : "distal");
  });
  const wires = Array.from({ length: form.wires }, (_, index) =>
    hole(
      `${naming.wire}${index + 1}`,
      "wire",
      10.5 + index * 8 + off(index + 6),
      lean + off(index + 7) / 2,
    ),
  );
  const sutures = Array.from({ length: form.sutures }, (_, index) =>
    hole(
      `${naming.suture}${index + 1}`,
      "suture",
      11 + off(index + 8),
      lean + (index === 0 ? -1 : 1) * (breadth - 1.6),
      "head",
    ),
  );
  const half = breadth + 1;
  const [top, bottom] = [lean - half, lean + half];
  const middle = (x: number): number => bowed(x);
  const segments = [
    curve([8, top - bulge(0)], [start - 14, top], [start - 6, -taper - 1]),
    curve(
      [start + 12, middle(start + 30) - taper - 1 - bulge(1) / 3],
      [end - 12, middle(end - 30) - taper - 1],
      [end, -taper + 1],
    ),
    { line: um(end, taper - 1) },
    curve(
      [end - 12, middle(end - 30) + taper + 1 + bulge(2) / 3],
      [start + 12, middle(start + 30) + taper + 1],
      [start - 6, taper + 1],
    ),
    curve([start - 14, bottom], [8, bottom + bulge(3)], [0, bottom - 2]),
    curve([-2, lean + 4], [-2, lean - 4], [0, top + 2]),
  ];
  return plate("generated", um(0, top + 2), segments, [...head, ...shaft, ...wires, ...sutures], {
    side,
    proximal,
    ...(hooks > 0
      ? { hooks: { count: hooks, depth: 5000, spread: 7000, at: "start" as const } }
      : {}),
  });
}

/** Plates with three to twenty-four holes: heads of any breadth that lean to a side, straight or bowed shafts with holes in
 * line or staggered, edges that bulge in or out, with and without hooks, holes named in three languages by up to 24 mm. */
export const generatedPlate: fc.Arbitrary<LaidPlate> = fc
  .tuple(shape, words)
  .map(([form, said]) => drawn(form, said))
  .filter((made) => made.holes.length <= 24 && apart(made));

/** How thick a generated plate is (micrometres), and which of its row's gaps may be bent. */
export const generatedSide = fc.record({
  thickness: fc.record({
    head: fc.option(fc.integer({ min: 1000, max: 4000 }), { nil: undefined }),
    shaft: fc.integer({ min: 1000, max: 5500 }),
  }),
  bent: fc.array(fc.boolean(), { maxLength: 4 }),
});

/** The pairs of neighbouring row holes that may be bent between, one for each true. */
export function bendsOf(
  { holes }: LaidPlate,
  bent: readonly boolean[],
): readonly (readonly [string, string])[] {
  const row = holes.filter(({ region, kind }) => region === "shaft" && kind !== "wire");
  return row
    .slice(1)
    .flatMap(({ label }, index) =>
      bent[index] ? [[row[index]?.label ?? "", label] as const] : [],
    );
}
