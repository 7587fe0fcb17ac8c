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

const kinds = ["threaded", "plain-round", "plain-oblong", "combined"] as const;

/** Plates with three to twenty-four holes, two rows or one, heads of any breadth, edges that bulge in or out. */
export const generatedPlate: fc.Arbitrary<LaidPlate> = fc
  .record({
    row: fc.integer({ min: 2, max: 15 }),
    pitch: fc.integer({ min: 11, max: 17 }),
    kind: fc.constantFrom(...kinds),
    headHoles: fc.array(fc.constantFrom("threaded" as const, "plain-round" as const), {
      minLength: 1,
      maxLength: 6,
    }),
    wires: fc.integer({ min: 0, max: 3 }),
    breadth: fc.integer({ min: 18, max: 30 }),
    bulges: fc.array(fc.integer({ min: -30, max: 30 }), { minLength: 4, maxLength: 4 }),
    jitter: fc.array(fc.integer({ min: -8, max: 8 }), { minLength: 12, maxLength: 12 }),
    side: fc.constantFrom("left" as const, "right" as const, "none" as const),
    proximal: fc.constantFrom("start" as const, "end" as const),
    hooks: fc.boolean(),
  })
  .map(({ row, pitch, kind, headHoles, wires, breadth, bulges, jitter, side, proximal, hooks }) => {
    const off = (index: number): number => (jitter[index % jitter.length] ?? 0) / 10;
    const head: LaidHole[] = headHoles.map((form, index) => {
      const [column, line] = [Math.floor(index / 2), index % 2];
      return hole(
        `H${index + 1}`,
        form,
        6 + column * 10 + off(index),
        (line === 0 ? -1 : 1) * (breadth / 2 - 5) + off(index + 3) / 2,
        "head",
      );
    });
    const start = 10 + Math.ceil(headHoles.length / 2) * 10 + 4;
    const shaft: LaidHole[] = Array.from({ length: row }, (_, index) => {
      const x = start + index * Math.max(pitch, kind === "combined" ? 13 : 11);
      return kind === "combined"
        ? combined(`S${index + 1}`, x, 0, index % 2 ? "distal" : "proximal")
        : hole(`S${index + 1}`, kind, x, 0);
    });
    const pins = Array.from({ length: wires }, (_, index) =>
      hole(`W${index + 1}`, "wire", 10.5 + index * 7 + off(index + 6), off(index + 7) / 2),
    );
    const end = start + (row - 1) * Math.max(pitch, 13) + 8;
    const um = (x: number, y: number): Point => [Math.round(x * 1000), Math.round(y * 1000)];
    const bend = (at: number): number => (bulges[at] ?? 0) / 10;
    const half = breadth / 2 + 1;
    const segments: OutlineSegment[] = [
      { curve: [um(8, -half - bend(0)), um(start - 14, -half), um(start - 4, -6)] },
      { curve: [um(start + 10, -6 - bend(1) / 3), um(end - 10, -6), um(end, -4)] },
      { line: um(end, 4) },
      { curve: [um(end - 10, 6 + bend(2) / 3), um(start + 10, 6), um(start - 4, 6)] },
      { curve: [um(start - 14, half), um(8, half + bend(3)), um(0, half)] },
      { line: um(0, -half) },
    ];
    return plate("generated", um(0, -half), segments, [...head, ...shaft, ...pins], {
      side,
      proximal,
      ...(hooks ? { hooks: { count: 2, depth: 5000, spread: 7000, at: "start" as const } } : {}),
    });
  })
  .filter(apart);
