import { expect, it } from "vitest";
import { answerOf, change, reasonsOf } from "../verdict-of.ts";

it("chooses the sleeve of the hole's thread", () => {
  expect(answerOf("locking", "sleeve")).toBe("sleeve-35");
  expect(reasonsOf("locking", "sleeve", "sleeve-27")).toEqual([
    "thread th-27; thread th-35 is asked",
    "bore 2.1 is 0.6 narrower than drill 2.7; 0.05 to 0.20 is asked",
  ]);
});

it.each([
  [2.749, "none"],
  [2.75, "sleeve-35"],
  [2.9, "sleeve-35"],
  [2.901, "none"],
])("with a bore of %f answers %s", (bore, answer) => {
  expect(answerOf("locking", "sleeve", [change("instrument/sleeve-35", "bore").to(bore)])).toBe(
    answer,
  );
});
