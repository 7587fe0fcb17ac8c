import { expect, it } from "vitest";
import { answerOf, change, reasonsOf } from "../verdict-of.ts";

it("chooses the pilot drill by the screw's pilot and leaves the gliding drill of the same diameter", () => {
  expect(answerOf("locking", "pilot-drill")).toBe("drill-27-pilot");
  expect(reasonsOf("locking", "pilot-drill", "drill-27-gliding")).toEqual([
    "a gliding drill; a pilot drill is asked",
  ]);
});

it("names every reason of a candidate that falls out", () => {
  expect(reasonsOf("locking", "pilot-drill", "drill-35")).toEqual([
    "a gliding drill; a pilot drill is asked",
    "diameter 3.5; drill 2.7 is asked",
  ]);
});

it("chooses the gliding drill by the screw's gliding drill", () => {
  expect(answerOf("lag", "gliding-drill")).toBe("drill-35");
});

it.each([2.699, 2.701])("does not take drill %f for drill 2.7", (diameter) => {
  expect(
    answerOf("locking", "pilot-drill", [
      change("instrument/drill-27-pilot", "diameter").to(diameter),
    ]),
  ).toBe("none");
});

it("does not choose by reach, which a rule judges", () => {
  expect(
    answerOf("locking", "pilot-drill", [change("instrument/drill-27-pilot", "reach").to(20)]),
  ).toBe("drill-27-pilot");
});
