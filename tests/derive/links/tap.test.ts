import { expect, it } from "vitest";
import { derive } from "../../../lib/derive/derive.ts";
import { referenceLibrary } from "../../fixtures/reference-library.ts";
import { answerOf, chainIds, chainOf, change, reasonsOf } from "../verdict-of.ts";

const none = change("instrument/tap-35").to(undefined);

it("chooses the tap of the screw's own thread, and tells two of one pitch or diameter apart", () => {
  expect(answerOf("cancellous", "tap")).toBe("tap-40");
  expect(reasonsOf("cancellous", "tap", "tap-35")).toEqual([
    "diameter 3.5; tap 4.0 is asked",
    "pitch 1.25; pitch 1.75 is asked",
  ]);
});

it("leaves a tap that does not pass the hole", () => {
  expect(
    reasonsOf("cancellous", "tap", "tap-40", [change("zone/plain-35", "through").to(3.999)]),
  ).toEqual(["tap 4.0 does not pass 3.999, the width of the hole"]);
});

it("does without a tap where the screw cuts its own thread", () => {
  const link = chainOf("neutral", [none]).links.find(({ role }) => role === "tap");
  expect(link).toMatchObject({ required: false });
  expect(link?.instrument).toBeUndefined();
  expect(derive(referenceLibrary([none])).gaps).toEqual([]);
});

it("is open without a tap where the screw cuts no thread", () => {
  const gaps = derive(referenceLibrary([change("instrument/tap-40").to(undefined)])).gaps;
  expect(gaps.map(({ chain, role, fitting }) => [chain, role, fitting])).toEqual([
    [chainIds.cancellous, "tap", []],
  ]);
});

it("is open with two taps even where none is needed", () => {
  const twin = change("instrument/tap-35-long").to({ ...tap, length: 150 });
  const gaps = derive(referenceLibrary([twin])).gaps;
  expect(new Set(gaps.map(({ role, fitting }) => `${role} ${fitting}`))).toEqual(
    new Set(["tap tap-35,tap-35-long"]),
  );
});

const tap = {
  kind: "tap",
  name: "tap 3.5 long",
  mark: "3.5",
  diameter: 3.5,
  pitch: 1.25,
  coupling: "shaft-small",
  source: { document: "pebblefin-ifu", section: "Table 1" },
};
