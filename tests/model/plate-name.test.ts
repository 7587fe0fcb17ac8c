import { describe, expect, test } from "vitest";
import { plateName, plateTitle } from "../../lib/model/plate-name.ts";

describe("a plate's name", () => {
  test.each([
    ["Lower fibula plate", "left", "Lower fibula plate, LEFT"],
    ["Lower fibula plate", "right", "Lower fibula plate, RIGHT"],
    ["lower fibula plate, left", "left", "lower fibula plate, LEFT"],
    ["Right lower fibula plate", "right", "RIGHT lower fibula plate"],
    ["Cleft plate", "left", "Cleft plate, LEFT"],
    ["Straight plate", "none", "Straight plate"],
  ] as const)("of %s, side %s, is %s", (name, side, expected) => {
    expect(plateName({ name, side })).toBe(expected);
  });

  test.each([
    ["Lower fibula plate", 5, "Lower fibula plate, LEFT, 5 holes"],
    ["Lower fibula plate", 1, "Lower fibula plate, LEFT, 1 hole"],
    ["Left lower fibula plate, 5 holes", 5, "LEFT lower fibula plate, 5 holes"],
    ["Left lower fibula plate, 5 holes", 15, "LEFT lower fibula plate, 5 holes, 15 holes"],
  ])("%s in a length of %i holes is %s", (name, holes, expected) => {
    expect(plateTitle({ name, side: "left" }, holes)).toBe(expected);
  });
});
