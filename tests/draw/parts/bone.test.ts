import { describe, expect, test } from "vitest";
import { drawFigure } from "../../../lib/draw/canvas.ts";
import { boneBetween, boneDots, boxRim } from "../../../lib/draw/parts/bone.ts";
import { type Dots, dots } from "../../../lib/draw/tokens.ts";

type Drawn = Parameters<Parameters<typeof drawFigure>[2]>[0];

/** The middles of all dots of each kind in what is drawn. */
function dotsOf(draw: (pen: Drawn) => void): Readonly<Record<Dots, readonly [number, number][]>> {
  const { svg } = drawFigure("b", { title: "b", description: "b", width: 40, height: 30 }, draw);
  const of = (kind: Dots): [number, number][] =>
    [...svg.matchAll(new RegExp(`d="([^"]*)"[^>]*data-bone="${kind}"`, "g"))].flatMap(
      ([, d = ""]) =>
        [...d.matchAll(/M([\d.]+) ([\d.]+)/g)].map(([, x, y]): [number, number] => [
          Number(x),
          Number(y),
        ]),
    );
  return { cortex: of("cortex"), marrow: of("marrow") };
}

describe("the dots that mean bone", () => {
  test.each(["cortex", "marrow"] as const)("fill an area of %s without leaving it", (kind) => {
    const { size, step } = dots[kind];
    const spots = dotsOf((pen) => boneDots(pen, kind, boxRim([3, 4], 21, 13)))[kind];
    expect(spots.length).toBeGreaterThan((0.8 * 21 * 13) / (step * step));
    for (const [x, y] of spots) {
      expect(x - size / 2).toBeGreaterThanOrEqual(3);
      expect(x + size / 2).toBeLessThanOrEqual(24);
      expect(y - size / 2).toBeGreaterThanOrEqual(4);
      expect(y + size / 2).toBeLessThanOrEqual(17);
    }
  });

  test("keep off a corner that is cut", () => {
    const spots = dotsOf((pen) =>
      boneDots(pen, "marrow", [
        [0, 20],
        [20, 0],
        [20, 20],
      ]),
    ).marrow;
    expect(spots.length).toBeGreaterThan(40);
    for (const [x, y] of spots) expect(x + y).toBeGreaterThan(20);
  });

  test("lie dense along the rims and wide between them, never over one another", () => {
    const { cortex, marrow } = dotsOf((pen) =>
      boneBetween(pen, [2, 30], [1, 20], { far: 0, near: 3 }),
    );
    expect(cortex.length).toBeGreaterThan(40);
    for (const [x] of cortex) expect(x).toBeGreaterThan(27);
    for (const [x] of marrow) expect(x).toBeLessThan(27);
  });
});
