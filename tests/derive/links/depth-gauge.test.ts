import { expect, it } from "vitest";
import type { Edit } from "../../fixtures/catalogue-of.ts";
import { change, reasonsOf } from "../verdict-of.ts";

const gauge = "instrument/gauge-small";
const reasons = (...edits: Edit[]) => reasonsOf("locking", "gauge", "gauge-small", edits);

it.each([
  [2.699, []],
  [2.7, ["hook 2.7 does not pass the hole of drill 2.7"]],
])("judges a hook of %f in the hole of drill 2.7", (hook, because) => {
  expect(reasons(change(gauge, "hook").to(hook))).toEqual(because);
});

it.each([
  [10, 70, []],
  [10.001, 70, ["scale 10.001 to 70 does not cover the rack, 10 to 70"]],
  [10, 69.999, ["scale 10 to 69.999 does not cover the rack, 10 to 70"]],
])("judges a scale from %f to %f for a rack from 10 to 70", (from, to, because) => {
  expect(reasons(change(gauge, "scale").to({ from, to, step: 1 }))).toEqual(because);
});

it("leaves a gauge for the sleeve once the sleeve is out", () => {
  expect(reasons(change(gauge, "seat").to("sleeve"))).toEqual([
    "seats on a sleeve; here the hole itself is measured",
  ]);
});

it("takes a gauge for the sleeve while the sleeve is in", () => {
  const stays = change("recipe/locking-through-sleeve", "steps", 3).to({
    id: "look",
    verb: "confirm",
    say: "Look.",
  });
  expect(reasons(stays, change(gauge, "seat").to("sleeve"))).toEqual([]);
});
