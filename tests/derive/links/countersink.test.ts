import { expect, it } from "vitest";
import { derive } from "../../../lib/derive/derive.ts";
import { referenceLibrary } from "../../fixtures/reference-library.ts";
import { answerOf, change, reasonsOf } from "../verdict-of.ts";

const asked = change("recipe/lag-through-plate", "steps", 6).to({
  id: "sink",
  verb: "countersink",
  say: "Countersink outside the plate.",
  uses: { kind: "countersink" },
});
const reasons = (file: string, key: string, value: unknown) =>
  reasonsOf("lag", "countersink", "countersink-35", [asked, change(file, key).to(value)]);

it("chooses the countersink of the head's form and diameter", () => {
  expect(answerOf("lag", "countersink", [asked])).toBe("countersink-35");
  expect(reasons("instrument/countersink-35", "form", "conical")).toEqual([
    "a conical cut; the head is spherical",
  ]);
  expect(reasons("instrument/countersink-35", "head", 5.999)).toEqual([
    "cut 5.999; head 6.0 is asked",
  ]);
});

it("is done without where the system has none", () => {
  expect(
    derive(referenceLibrary([asked, change("instrument/countersink-35").to(undefined)])).gaps,
  ).toEqual([]);
});
