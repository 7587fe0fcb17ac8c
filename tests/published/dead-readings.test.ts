import { expect, it } from "vitest";
import { derive } from "../../lib/derive/derive.ts";
import { referenceLibrary } from "../fixtures/reference-library.ts";

/** Computed, not published: worked out by hand from the rack (10 to 50 by 2, then 55 to 70 by 5) and the policy
 * (add 0 locking, 2 plain-head, overshoot below 2), both invented. */
const { lengthTables } = derive(referenceLibrary());
const dead = (screw: string, kind: "gap" | "above" | "below"): readonly number[] =>
  lengthTables
    .get(screw)
    ?.readings.filter(({ answer }) => answer.kind === kind)
    .map(({ reading }) => reading / 1000) ?? [];

it("has no plain-head screw 3.5 for 49–51, 54–56, 59–61 and 64–66, nor past 68", () => {
  expect(dead("cortical-35", "gap")).toEqual([49, 50, 51, 54, 55, 56, 59, 60, 61, 64, 65, 66]);
  expect(dead("cortical-35", "above")).toEqual([69, 70]);
  expect(dead("cortical-35", "below")).toEqual([]);
});

it("has no locking screw 3.5 for 51–53, 56–58, 61–63 and 66–68; the gauge ends where the rack does", () => {
  expect(dead("locking-35", "gap")).toEqual([51, 52, 53, 56, 57, 58, 61, 62, 63, 66, 67, 68]);
  expect(dead("locking-35", "above")).toEqual([]);
});
