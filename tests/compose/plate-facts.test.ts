import { describe, expect, test } from "vitest";
import {
  bendWords,
  orientationLines,
  plateSide,
  sideWords,
} from "../../lib/compose/plate-facts.ts";
import { labelSpan } from "../../lib/model/label-span.ts";
import { minnow } from "./minnow.ts";

const [bar] = minnow.derived.plates;
if (bar === undefined) throw new Error("The fixture has a plate");

describe("plate facts", () => {
  test.each([
    [["S1", "S2", "S3"], "S1–S3"],
    [["S1", "S2"], "S1, S2"],
    [["H1", "H2", "H3", "S1", "S3"], "H1–H3, S1, S3"],
    [["S9", "S10", "S11"], "S9–S11"],
    [[], ""],
  ])("span the labels %j as %s", (labels, words) => {
    expect(labelSpan(labels)).toBe(words);
  });

  test.each([
    ["left", "LEFT"],
    ["right", "RIGHT"],
    ["none", "No side"],
  ] as const)("say side %s as %s", (side, words) => {
    expect(sideWords(side)).toBe(words);
  });

  test("say which way the plate lies from its own cue", () => {
    expect(orientationLines(minnow.catalogue, bar)).toEqual([
      "Towards the body: the narrow end, at the left of the picture.",
      "The etched face lies up.",
    ]);
  });

  test("name the bend zones that this length of the plate has", () => {
    const side = plateSide(minnow.catalogue, bar.plate);
    const [one, other] = bar.holes.map(({ label }) => label);
    if (one === undefined || other === undefined) throw new Error("Too few holes");
    const bends = [[one, other] as const, [one, "S99"] as const];
    expect(bendWords(bar, { ...side, bends })).toBe(`${one}–${other}`);
    expect(bendWords(bar, { ...side, bends: [] })).toBe("");
  });
});
