import { expect, it } from "vitest";
import { derive } from "../../../lib/derive/derive.ts";
import { referenceLibrary } from "../../fixtures/reference-library.ts";
import { answerOf, chainIds, change, reasonsOf } from "../verdict-of.ts";

it("chooses the limiter of the screw's torque", () => {
  expect(answerOf("locking", "limiter")).toBe("limiter-16");
  expect(reasonsOf("locking", "limiter", "limiter-09")).toEqual([
    "releases at 0.9 N·m; 1.6 N·m is asked",
  ]);
});

it("leaves a limiter that does not take the driver", () => {
  const large = change("instrument/limiter-16", "coupling_in").to("shaft-large");
  expect(reasonsOf("locking", "limiter", "limiter-16", [large])).toEqual([
    "takes large shaft coupling; the driver has small shaft coupling",
  ]);
});

it("says nothing of limiter and handle while the driver is missing, for that gap stands already", () => {
  const gaps = derive(referenceLibrary([change("instrument/driver-20").to(undefined)])).gaps.filter(
    ({ chain }) => chain === chainIds.locking,
  );
  expect(gaps.map(({ role }) => role)).toEqual(["driver"]);
});
