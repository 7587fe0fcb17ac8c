import fc from "fast-check";
import { expect, it } from "vitest";
import { outlineBounds } from "../../lib/derive/outline-bounds.ts";
import type { Point } from "../../lib/model/laid-plate.ts";

it("finds the top of an arch, not its control points", () => {
  const arch = {
    start: [0, 0] as Point,
    segments: [
      {
        curve: [
          [0, 4000],
          [3000, 4000],
          [3000, 0],
        ] as [Point, Point, Point],
      },
    ],
  };
  expect(outlineBounds(arch)).toEqual({ min: [0, 0], max: [3000, 3000] });
});

it("holds every point of a curve and reaches no further than the curve does", () => {
  const point = fc.tuple(
    fc.integer({ min: -40_000, max: 40_000 }),
    fc.integer({ min: -40_000, max: 40_000 }),
  );
  fc.assert(
    fc.property(point, point, point, point, (a, b, c, d) => {
      const { min, max } = outlineBounds({ start: a, segments: [{ curve: [b, c, d] }] });
      for (const axis of [0, 1] as const) {
        const seen = Array.from({ length: 2001 }, (_, index) => {
          const t = index / 2000;
          return (
            (1 - t) ** 3 * a[axis] +
            3 * (1 - t) ** 2 * t * b[axis] +
            3 * (1 - t) * t * t * c[axis] +
            t ** 3 * d[axis]
          );
        });
        expect(Math.abs(min[axis] - Math.min(...seen))).toBeLessThan(2);
        expect(Math.abs(max[axis] - Math.max(...seen))).toBeLessThan(2);
      }
    }),
    { numRuns: 60 },
  );
});
