import { describe, expect, test } from "vitest";
import { textWidth } from "../../lib/draw/text-widths.ts";

describe("the width of words", () => {
  // Chromium 150 sets these at 10 px of the same typeface with tabular figures, measured with getComputedTextLength.
  test.each([
    ["3.5 mm locking hole", 400, 90.55],
    ["Torque 1.5 N.m", 700, 72.25],
    ["11 holes", 400, 39.09],
    ["14–100", 700, 36.63],
  ] as const)("%s (%d) covers what a browser sets, by at most 3 %%", (words, weight, browser) => {
    const width = textWidth(words, 10, weight);
    expect(width).toBeGreaterThanOrEqual(browser);
    expect(width).toBeLessThanOrEqual(browser * 1.03);
  });

  test("grows with the size", () => {
    expect(textWidth("drill", 8)).toBeCloseTo(2 * textWidth("drill", 4), 6);
  });

  test("covers letters beyond plain Latin", () => {
    expect(textWidth("Łódź", 4)).toBeGreaterThan(textWidth("Łód", 4));
  });

  test("refuses a character that the typeface lacks, by its name", () => {
    expect(() => textWidth("length ≥ 10", 4)).toThrow('lacks the character "≥" (U+2265)');
  });
});
