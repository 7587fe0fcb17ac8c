import { describe, expect, test } from "vitest";
import { formats } from "../../lib/model/format.ts";
import { capHeight, floorSize, typeFloors } from "../../lib/model/type-sizes.ts";

/** Paper in mm and in points of 1/72 inch: A sizes of ISO 216 and Letter of ANSI Y14.1, from memory; ID-1 of ISO/IEC 7810 as
 * printed at en-academic.com/dic.nsf/enwiki/11587419 (85.60 × 53.98 mm). */
const papers = [
  ["a2-landscape", 594, 420, 1683.78, 1190.55],
  ["a3-portrait", 297, 420, 841.89, 1190.55],
  ["a4-portrait", 210, 297, 595.28, 841.89],
  ["a5-portrait", 148, 210, 419.53, 595.28],
  ["a6-portrait", 105, 148, 297.64, 419.53],
  ["letter-portrait", 215.9, 279.4, 612, 792],
  ["half-letter-portrait", 139.7, 215.9, 396, 612],
  ["id-1", 85.6, 53.98, 242.65, 153.01],
] as const;

describe("paper as the standards print it", () => {
  test.each(papers)("%s measures %f × %f mm", (id, width, height, wide, high) => {
    const paper = formats[id];
    expect([paper.width, paper.height]).toEqual([width, height]);
    expect((paper.width / 25.4) * 72).toBeCloseTo(wide, 2);
    expect((paper.height / 25.4) * 72).toBeCloseTo(high, 2);
  });
});

/** Heights in mm of a letter that spans an angle at a distance, worked out by hand from the angle; the angles themselves are those of
 * NUREG-0700 rev. 3, 11.4.1.5-1 and its display section: at least 16 minutes of arc, better 20. */
const heights = [
  [300, 1.4, 1.75],
  [350, 1.63, 2.04],
  [400, 1.86, 2.33],
  [500, 2.33, 2.91],
  [600, 2.79, 3.49],
  [700, 3.26, 4.07],
  [1000, 4.65, 5.82],
  [1500, 6.98, 8.73],
  [2000, 9.31, 11.64],
] as const;

describe("heights of letters for a distance", () => {
  const tall = { cap: 0.7, x: 0.7 };

  test.each(heights)(
    "at %i mm span 16 and 20 minutes of arc with %f and %f mm",
    (at, low, good) => {
      expect(floorSize(16, at, tall) * tall.cap).toBeCloseTo(low, 2);
      expect(floorSize(20, at, tall) * tall.cap).toBeCloseTo(good, 2);
    },
  );
});

/** Least heights of letters on labels in mm up to a distance in mm: the table of MIL-STD-1472F. It asks for capitals;
 * ours are counted at the same distances. */
const labels = [
  [500, 2.3],
  [1000, 4.7],
  [2000, 9.4],
] as const;

describe("called-out words against the table for labels", () => {
  test.each(labels)("read at %i mm have capitals of at least %f mm", (distance, least) => {
    expect(typeFloors("pairing", { distance }).called * capHeight).toBeGreaterThanOrEqual(least);
  });
});
