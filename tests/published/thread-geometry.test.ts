import { describe, expect, test } from "vitest";
import { threadEdge } from "../../lib/draw/parts/segments/thread-edge.ts";

/** Thread shape factor and pull-out force of Chapman et al., J Biomech Eng 1996;118(3):391–398, with the equation from memory:
 * F = S·π·L·D·TSF, TSF = 0.5 + 0.57735·d/p, d = (D − core)/2, worked by hand for the nine ISO 5835 screws (sizes from memory) with
 * invented S = 2 MPa and L = 20 mm. It is met here by what is drawn and is printed nowhere: a cross-check of thread geometry alone. */
const rows = [
  ["HA 1.5", 1.5, 1.1, 0.5, 0.7309, 137.8],
  ["HA 2.0", 2, 1.3, 0.6, 0.8368, 210.3],
  ["HA 2.7", 2.7, 1.9, 1, 0.7309, 248],
  ["HA 3.5", 3.5, 2.4, 1.25, 0.754, 331.6],
  ["HA 4.0", 4, 2.9, 1.5, 0.7117, 357.7],
  ["HA 4.5", 4.5, 3, 1.75, 0.7474, 422.7],
  ["HA 5.0", 5, 3.5, 1.75, 0.7474, 469.6],
  ["HB 4.0", 4, 1.9, 1.75, 0.8464, 425.5],
  ["HB 6.5", 6.5, 3, 2.75, 0.8674, 708.5],
] as const;

/** Outer diameter, depth and pitch as they stand in a drawn edge, mm. */
function drawn(major: number, core: number, pitch: number) {
  const edge = threadEdge(20, { major, core, pitch }, { from: 0, to: 20, shift: 0 });
  const highest = Math.max(...edge.map(([, half]) => half));
  const lowest = Math.min(...edge.map(([, half]) => half));
  const crests = edge.filter(([, half]) => Math.abs(half - highest) < 1e-9).map(([x]) => x);
  const steps = crests.slice(1).map((x, index) => x - (crests[index] ?? 0));
  return { outer: 2 * highest, depth: highest - lowest, steps };
}

describe("a drawn thread", () => {
  test.each(rows)(
    "of %s has its diameters and its pitch",
    (_type, major, core, pitch, factor, force) => {
      const { outer, depth, steps } = drawn(major, core, pitch);
      expect(steps.length).toBeGreaterThan(5);
      for (const step of steps) expect(step).toBeCloseTo(pitch, 6);
      const [step = Number.NaN] = steps;
      const shape = 0.5 + (0.57735 * depth) / step;
      expect(shape).toBeCloseTo(factor, 4);
      expect(Math.abs(2 * Math.PI * 20 * outer * shape - force)).toBeLessThan(0.06);
    },
  );
});
