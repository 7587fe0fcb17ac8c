import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type RowNeed, rowHeights } from "../../../../lib/draw/parts/tray/row-heights.ts";

const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);
const need = (from: number, rows: number, height: number): RowNeed => ({ from, rows, height });

describe("the heights of a tray's rows", () => {
  test("give a row what its slots need and share the rest", () => {
    expect(
      rowHeights([[need(0, 1, 10), need(1, 1, 26), need(2, 1, 12)]], 3, { room: 60, own: 20 }),
    ).toEqual([17, 26, 17]);
  });

  test("make no row higher than to scale by more than a third where none needs it", () => {
    expect(sum(rowHeights([[need(0, 1, 10)]], 2, { room: 200, own: 20 }))).toBeCloseTo(54, 9);
  });

  test("share what a slot over several rows needs", () => {
    expect(rowHeights([[need(0, 2, 30), need(0, 1, 18)]], 2, { room: 30, own: 10 })).toEqual([
      18, 12,
    ]);
  });

  test("follow the first needs that have room, and are all alike where none have", () => {
    const rows = { room: 40, own: 20 };
    expect(rowHeights([[need(0, 1, 41)], [need(0, 1, 30)]], 2, rows)).toEqual([30, 10]);
    expect(rowHeights([[need(0, 1, 41)]], 2, rows)).toEqual([20, 20]);
  });

  test("hold every need and fill no more than the room, whatever is asked", () => {
    const asked = fc.array(
      fc.record({
        from: fc.nat(5),
        rows: fc.integer({ min: 1, max: 3 }),
        height: fc.double({ min: 1, max: 60, noNaN: true }),
      }),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(asked, fc.integer({ min: 40, max: 400 }), (needs, room) => {
        const heights = rowHeights([needs], 8, { room, own: room / 8 });
        expect(sum(heights)).toBeLessThanOrEqual(room + 1e-6);
        const even = heights.every((one) => Math.abs(one - room / 8) < 1e-9);
        if (even) return;
        for (const { from, rows, height } of needs)
          expect(sum(heights.slice(from, from + rows))).toBeGreaterThanOrEqual(height - 1e-6);
      }),
    );
  });
});
