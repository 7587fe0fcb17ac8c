import { expect, it } from "vitest";
import { answerOf, chainOf, change, reasonsOf } from "../verdict-of.ts";

const pilot = "instrument/guide-25";
const gliding = "instrument/guide-35-gliding";

it.each([
  ["at the width of the hole", 4.2, []],
  [
    "a thousandth wider than the hole",
    4.201,
    ["foot 4.201 does not pass 4.2, the width of the hole"],
  ],
])("judges a pilot guide's foot %s", (_, foot, because) => {
  expect(
    reasonsOf("neutral", "guide", "guide-25", [change(pilot, "ends", 0, "foot").to(foot)]),
  ).toEqual(because);
});

it("judges the foot of the end that is asked, not of another", () => {
  const wide = [change(pilot, "ends", 1, "foot").to(4.3)];
  expect(answerOf("neutral", "guide", wide)).toBe("guide-25");
  expect(answerOf("compression", "guide", wide)).toBe("none");
});

it("names the end in the link", () => {
  expect(chainOf("compression").links.find(({ role }) => role === "guide")?.end).toBe("offset");
});

it("leaves a guide without the asked end", () => {
  expect(
    reasonsOf("compression", "guide", "guide-25", [
      change(pilot, "ends").to([{ name: "centred", foot: 3.7 }]),
    ]),
  ).toEqual(["no offset end"]);
});

it.each([
  [2.549, 1],
  [2.55, 0],
  [2.7, 0],
  [2.701, 1],
])("judges a bore of %f over drill 2.5 with %i faults", (bore, faults) => {
  expect(reasonsOf("neutral", "guide", "guide-25", [change(pilot, "bore").to(bore)])).toHaveLength(
    faults,
  );
});

it.each([
  ["at the seat", 6.4, []],
  ["a thousandth wider than the seat", 6.401, ["foot 6.401 is wider than the seat, 6.4"]],
])("judges a gliding guide's foot %s", (_, foot, because) => {
  expect(
    reasonsOf("lag", "gliding-guide", "guide-35-gliding", [
      change(gliding, "ends", 0, "foot").to(foot),
    ]),
  ).toEqual(because);
});

it("leaves a gliding guide that rests in the hole", () => {
  expect(
    reasonsOf("lag", "gliding-guide", "guide-35-gliding", [
      change(gliding, "rests_on").to("bone"),
    ])[0],
  ).toBe("rests on the bone; a gliding guide rests on the seat");
});

it("leaves a guide made for the other use", () => {
  expect(reasonsOf("neutral", "guide", "guide-35-gliding")).toContain(
    "a guide for the gliding drill; one for the pilot drill is asked",
  );
});
