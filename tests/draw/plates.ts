import type {
  LaidHole,
  LaidPlate,
  LaidZone,
  OutlineSegment,
  Point,
} from "../../lib/model/laid-plate.ts";

const um = (value: number): number => Math.round(value * 1000);
const at = (x: number, y: number): Point => [um(x), um(y)];

const sizes = {
  threaded: { through: 4100 },
  "plain-round": { through: 4200, seat: 6400 },
  "plain-oblong": { through: 4200, seat: 6400, slot: 6000 },
  wire: { through: 1700 },
  suture: { through: 2000 },
} as const;

const zone = (kind: LaidZone["kind"], x: number, y: number): LaidZone => ({
  zone: kind,
  kind,
  at: at(x, y),
  ...sizes[kind],
});

/** A hole of one zone at millimetres, for drawing tests. */
export function hole(
  label: string,
  kind: LaidZone["kind"],
  x: number,
  y: number,
  region: LaidHole["region"] = "shaft",
): LaidHole {
  return { label, opening: kind, kind, region, at: at(x, y), zones: [zone(kind, x, y)] };
}

/** A combined opening, its threaded part on the proximal or distal side of its middle (mm). */
export function combined(
  label: string,
  x: number,
  y: number,
  threadedEnd: "proximal" | "distal",
): LaidHole {
  const off = threadedEnd === "proximal" ? -2.6 : 2.6;
  const zones = [zone("threaded", x + off, y), zone("plain-oblong", x - off, y)];
  return {
    label,
    opening: "combined",
    kind: "combined",
    region: "shaft",
    at: at(x, y),
    zones,
    threadedEnd,
  };
}

/** A plate of the given outline (mm) and holes, proximal at its start. */
export function plate(
  id: string,
  start: Point,
  segments: readonly OutlineSegment[],
  holes: readonly LaidHole[],
  more: Partial<LaidPlate> = {},
): LaidPlate {
  const points = [
    start,
    ...segments.map((piece) => ("line" in piece ? piece.line : piece.curve[2])),
  ];
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const bounds = {
    min: [Math.min(...xs), Math.min(...ys)] as Point,
    max: [Math.max(...xs), Math.max(...ys)] as Point,
  };
  const length = bounds.max[0] - bounds.min[0];
  return {
    id,
    plate: id,
    system: "fixture",
    name: id,
    side: "none",
    holesInRow: holes.length,
    length,
    statedLength: length,
    proximal: "start",
    outline: { start, segments },
    holes,
    bounds,
    ...more,
  };
}

const line = (x: number, y: number): OutlineSegment => ({ line: at(x, y) });
const curve = (
  a: readonly [number, number],
  b: readonly [number, number],
  to: readonly [number, number],
): OutlineSegment => ({
  curve: [at(...a), at(...b), at(...to)],
});

/** A bar with round ends, `width` wide (mm). */
function bar(length: number, width: number): { start: Point; segments: OutlineSegment[] } {
  const [r, k] = [width / 2, width * 0.276];
  return {
    start: at(r, -r),
    segments: [
      line(length - r, -r),
      curve([length - r + k, -r], [length, -k], [length, 0]),
      curve([length, k], [length - r + k, r], [length - r, r]),
      line(r, r),
      curve([r - k, r], [0, k], [0, 0]),
      curve([0, -k], [r - k, -r], [r, -r]),
    ],
  };
}

const row = <T>(count: number, make: (index: number) => T): T[] =>
  Array.from({ length: count }, (_, index) => make(index));

const straight = bar(94, 11);
const shell = bar(66, 12);
const long = bar(268, 16);

/** Plates of every character: straight, with a broad head, hooked, long; millimetre data invented for the tests. */
export const plates: readonly LaidPlate[] = [
  plate(
    "straight-7",
    straight.start,
    straight.segments,
    row(7, (n) => hole(`S${n + 1}`, "plain-oblong", 8 + 13 * n, 0)),
  ),
  plate(
    "broad-head-left",
    at(0, -6),
    [
      curve([4, -12], [16, -13], [26, -8]),
      curve([32, -5.2], [36, -5], [42, -5]),
      line(106, -5),
      curve([110, -5], [112, -3], [112, 0]),
      curve([112, 3], [110, 5], [106, 5]),
      line(40, 5),
      curve([30, 5], [24, 10], [14, 11]),
      curve([5, 12], [-3, 2], [0, -6]),
    ],
    [
      hole("H1", "threaded", 6, -5, "head"),
      hole("H2", "threaded", 6, 5, "head"),
      hole("H3", "threaded", 14, 0, "head"),
      hole("H4", "threaded", 21, -5, "head"),
      hole("H5", "threaded", 22, 4, "head"),
      ...row(5, (n) => combined(`S${n + 1}`, 46 + 14 * n, 0, n < 3 ? "proximal" : "distal")),
      hole("W1", "wire", 12, -8.5, "head"),
      hole("W2", "wire", 32, 0, "head"),
    ],
    { side: "left", proximal: "end" },
  ),
  plate(
    "hooked-4",
    shell.start,
    shell.segments,
    [
      hole("H1", "plain-round", 9, 0, "head"),
      ...row(3, (n) => hole(`S${n + 1}`, "plain-oblong", 24 + 14 * n, 0)),
      hole("W1", "wire", 16, 3),
    ],
    { hooks: { count: 2, depth: 5500, spread: 7000, at: "start" }, proximal: "end" },
  ),
  plate(
    "long-14",
    long.start,
    long.segments,
    row(14, (n) => combined(`S${n + 1}`, 12 + 18.7 * n, 0, n < 7 ? "proximal" : "distal")),
  ),
  plate(
    "tee-right",
    at(0, -14),
    [
      curve([2, -20], [14, -20], [20, -14]),
      curve([26, -8], [34, -7], [42, -7]),
      line(150, -7),
      curve([155, -7], [158, -4], [158, 0]),
      curve([158, 4], [155, 7], [150, 7]),
      line(40, 7),
      curve([32, 8], [26, 12], [20, 18]),
      curve([12, 23], [2, 20], [0, 14]),
      curve([-2, 5], [-2, -5], [0, -14]),
    ],
    [
      hole("H1", "threaded", 6, -12, "head"),
      hole("H2", "threaded", 5, -4, "head"),
      hole("H3", "threaded", 5, 5, "head"),
      hole("H4", "threaded", 7, 13, "head"),
      hole("H5", "plain-round", 18, 1, "head"),
      ...row(7, (n) => combined(`S${n + 1}`, 46 + 16.6 * n, 0, "proximal")),
      hole("W1", "wire", 13, -13, "head"),
      hole("W2", "wire", 14, 16, "head"),
      hole("W3", "wire", 32, 0),
      hole("U1", "suture", 2, -9, "head"),
      hole("U2", "suture", 2, 9, "head"),
    ],
    { side: "right" },
  ),
];
