import { expect, test } from "vitest";
import { otherSide, pairedMap } from "../../lib/compose/paired-map.ts";
import { plateSide } from "../../lib/compose/plate-facts.ts";
import type { LaidPlate } from "../../lib/model/laid-plate.ts";
import { demo } from "../fixtures/demo-library.ts";

const { catalogue, derived, pictures } = demo;
const pairs = derived.plates.flatMap((left): [string, LaidPlate, LaidPlate][] => {
  const right = left.side === "left" ? otherSide(catalogue, derived, left) : undefined;
  return right === undefined ? [] : [[left.id, left, right]];
});

test("every left plate of the library has its right one of the same length, and that one it", () => {
  expect(pairs.map(([id]) => id)).toEqual(
    derived.plates.filter(({ side }) => side === "left").map(({ id }) => id),
  );
  for (const [, left, right] of pairs) {
    expect([right.side, right.holesInRow]).toEqual(["right", left.holesInRow]);
    expect(otherSide(catalogue, derived, right)).toBe(left);
  }
});

test("a plate of no side has no other side", () => {
  for (const plate of derived.plates.filter(({ side }) => side === "none"))
    expect(otherSide(catalogue, derived, plate)).toBeUndefined();
});

test.each(pairs)(
  "%s and its other side are drawn at one scale on paper of any height",
  (_, left, right) => {
    const side = plateSide(catalogue, left.plate);
    for (let height = 40; height <= 80; height += 4) {
      const size = { width: 194, height };
      const [one, other] = [
        pairedMap(pictures, "left", [left, right], size, { side }),
        pairedMap(pictures, "right", [right, left], size, { side }),
      ];
      expect(other.scale, `${height}`).toBe(one.scale);
    }
  },
);
