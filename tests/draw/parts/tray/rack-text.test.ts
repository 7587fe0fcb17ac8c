import { describe, expect, test } from "vitest";
import { rackText } from "../../../../lib/draw/parts/tray/rack-text.ts";
import { textWidth } from "../../../../lib/draw/text-widths.ts";

const sizes = { length: 6, pieces: 4 };
const rack = ["8", "36", "95", "100"].map((length) => ({ length, quantity: "3" }));

describe("the lengths of a rack", () => {
  const { runs } = rackText(rack, 1_000, sizes);
  const widthOf = (run: (typeof runs)[number]): number => textWidth(run.text, run.size, run.weight);
  const gapAfter = (index: number): number => {
    const [one, next] = [runs[index], runs[index + 1]];
    if (!one || !next) throw new Error("Nothing comes after it");
    return next.x - one.x - widthOf(one);
  };

  test("stand each before its pieces", () => {
    expect(runs.map(({ text }) => text)).toEqual(rack.flatMap(({ length }) => [length, "×3"]));
  });

  test("are closer to their own pieces than these are to the next length, however few digits they have", () => {
    for (let own = 0; own + 2 < runs.length; own += 2) {
      expect(gapAfter(own)).toBeGreaterThan(0);
      expect(gapAfter(own) * 2).toBeLessThan(gapAfter(own + 1));
    }
  });
});
