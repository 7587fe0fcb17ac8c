import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { layOutSlot } from "../../../../lib/draw/parts/tray/slot-layout.ts";
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
  [(width: number) => stacked([head(width), setLines("insert 3.5 / 2.5", 3.5, 400, width)]), head],
];

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
          const { text, textAt, picture } = layOutSlot(
            { width, height, spare },
            wordings,
            pictureOf(long, high, cuts),
          );
          if (picture === undefined) return;
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
  ])("sets the words %s", (_where, width, height, long, high, upright) => {
    const { picture } = layOutSlot({ width, height }, wordings, pictureOf(long, high, true));
    expect(picture?.length).toBe(long);
    expect(picture?.upright).toBe(upright);
  });

  test("says by how much the words run over when not even they fit", () => {
    expect(layOutSlot({ width: 60, height: 16 }, wordings, undefined).over).toBeUndefined();
    const { over, text } = layOutSlot({ width: 60, height: 3 }, wordings, undefined);
    expect(over).toBeCloseTo(text.height - 3, 9);
  });

  test("draws a body whole where it needs no more than the spare room at the sides", () => {
    const laid = (long: number, spare: readonly [number, number]) =>
      layOutSlot({ width: 72, height: 17, spare }, wordings, pictureOf(long, 2, true)).picture;
    expect(laid(73.5, [1, 0.6])).toMatchObject({ length: 73.5, upright: false });
    expect(laid(73.5, [1, 0.6])?.at[0]).toBeCloseTo(-0.95, 9);
    expect(laid(73.5, [0, 0])?.length).toBeLessThan(73.5);
    expect(laid(73.7, [1, 0.6])?.length).toBeLessThanOrEqual(72);
  });

  test("breaks a long body off and never a plate", () => {
    expect(
      layOutSlot({ width: 60, height: 16 }, wordings, pictureOf(120, 4, true)).picture?.length,
    ).toBeLessThan(61);
    expect(
      layOutSlot({ width: 60, height: 16 }, wordings, pictureOf(120, 4, false)).picture,
    ).toBeUndefined();
  });
});
