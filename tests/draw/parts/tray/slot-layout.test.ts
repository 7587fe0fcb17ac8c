import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { layOutSlot, overfull, type Shown } from "../../../../lib/draw/parts/tray/slot-layout.ts";
import type { SlotPicture } from "../../../../lib/draw/parts/tray/slot-picture.ts";
import {
  setLines,
  setRow,
  stacked,
  type TextBlock,
} from "../../../../lib/draw/parts/tray/slot-text.ts";

const pictureOf = (length: number, height: number, cuts: boolean): SlotPicture => ({
  length,
  cuts,
  height: () => height,
  draw: () => {},
});
const head = (width: number): TextBlock =>
  setRow(
    [
      { text: "B4", size: 3.5, weight: 600 },
      { text: "3.5/2.5", size: 4.6, weight: 700 },
    ],
    width,
  );
const wordings = [
  (width: number) => stacked([head(width), setLines("insert 3.5 / 2.5", 3.5, 400, width)]),
  head,
];
type Size = {
  readonly width: number;
  readonly height: number;
  readonly spare?: readonly [number, number];
};
const laidOut = (
  size: Size,
  picture: SlotPicture,
  broken: Shown["broken"] = "where needed",
  upright = size.height > size.width,
) => layOutSlot({ ...size, upright }, wordings, { picture, broken });

describe("the layout of a slot", () => {
  test("never lets words and picture touch, and keeps both inside, whatever the sizes", () => {
    const size = fc.double({ min: 8, max: 180, noNaN: true });
    fc.assert(
      fc.property(
        size,
        size,
        size,
        fc.double({ min: 1, max: 30, noNaN: true }),
        fc.boolean(),
        fc.constantFrom([0, 0] as const, [1.2, 0.8] as const),
        (width, height, long, high, cuts, spare) => {
          const laid = laidOut({ width, height, spare }, pictureOf(long, high, cuts));
          if (laid?.picture === undefined) return;
          const { text, textAt, picture } = laid;
          const {
            at: [x, y],
            length,
            upright,
          } = picture;
          const box = upright
            ? ([x - high / 2, y, x + high / 2, y + length] as const)
            : ([x, y - high / 2, x + length, y + high / 2] as const);
          const words = [
            textAt[0],
            textAt[1],
            textAt[0] + text.width,
            textAt[1] + text.height,
          ] as const;
          const clear =
            box[0] >= words[2] || box[2] <= words[0] || box[1] >= words[3] || box[3] <= words[1];
          expect(clear).toBe(true);
          for (const [[left, top, right, bottom], past] of [
            [box, length === long ? spare : [0, 0]],
            [words, [0, 0]],
          ] as const) {
            expect(left).toBeGreaterThanOrEqual(-past[0] - 0.001);
            expect(top).toBeGreaterThanOrEqual(-0.001);
            expect(right).toBeLessThanOrEqual(width + past[1] + 0.001);
            expect(bottom).toBeLessThanOrEqual(height + 0.001);
          }
        },
      ),
    );
  });

  test.each([
    ["above a picture that is as long as the slot", 100, 16, 98, 4, false],
    ["beside a picture when the slot is low", 100, 6.5, 60, 4, false],
    ["above an upright picture when the slot is high", 30, 80, 60, 8, true],
  ])("sets the words %s", (where, width, height, long, high, upright) => {
    const laid = laidOut({ width, height }, pictureOf(long, high, true));
    expect(laid?.picture?.length).toBe(long);
    expect(laid?.picture?.upright).toBe(upright);
    expect(laid?.picture?.beside ?? false).toBe(where.startsWith("beside"));
  });

  test("says by how much the words run over when not even they fit", () => {
    const room = (height: number) => ({ width: 60, height, upright: false });
    expect(layOutSlot(room(16), wordings, undefined)).toBeDefined();
    expect(layOutSlot(room(3), wordings, undefined)).toBeUndefined();
    const { over, text } = overfull(room(3), head);
    expect(over).toBeCloseTo(text.height - 3, 9);
    expect(overfull(room(16), head).over).toBeUndefined();
  });

  test("leaves a slot wider than high without an upright picture", () => {
    const high = pictureOf(12, 40, false);
    expect(laidOut({ width: 60, height: 45 }, high, "where needed", true)?.picture?.upright).toBe(
      true,
    );
    expect(laidOut({ width: 60, height: 14 }, high)).toBeUndefined();
  });

  test("draws a body whole where it needs no more than the spare room at the sides", () => {
    const laid = (long: number, spare: readonly [number, number]) =>
      laidOut({ width: 72, height: 17, spare }, pictureOf(long, 2, true))?.picture;
    expect(laid(73.5, [1, 0.6])).toMatchObject({ length: 73.5, upright: false });
    expect(laid(73.5, [1, 0.6])?.at[0]).toBeCloseTo(-0.95, 9);
    expect(laid(73.5, [0, 0])?.length).toBeLessThan(73.5);
    expect(laid(73.7, [1, 0.6])?.length).toBeLessThanOrEqual(72);
  });

  test("breaks a long body off and never a plate, and a shorter one only for the words' sake", () => {
    const size = { width: 60, height: 16 };
    expect(laidOut(size, pictureOf(120, 4, true))?.picture?.length).toBeLessThan(61);
    expect(laidOut(size, pictureOf(120, 4, true), "where longer")?.picture).toBeDefined();
    expect(laidOut(size, pictureOf(120, 4, false))).toBeUndefined();
    const low = { width: 60, height: 9 };
    expect(laidOut(low, pictureOf(58, 4, true))?.picture?.length).toBeLessThan(58);
    expect(laidOut(low, pictureOf(58, 4, true), "where longer")).toBeUndefined();
  });
});
