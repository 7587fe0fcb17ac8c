import { expect, it } from "vitest";
import { boreFault } from "../../../lib/derive/links/clearance.ts";

it.each([
  [2549, "bore 2.549 leaves 0.049 over drill 2.5; 0.05 to 0.20 is asked"],
  [2550, undefined],
  [2700, undefined],
  [2701, "bore 2.701 leaves 0.201 over drill 2.5; 0.05 to 0.20 is asked"],
  [2800, "bore 2.8 leaves 0.3 over drill 2.5; 0.05 to 0.20 is asked"],
  [2500, "bore 2.5 leaves 0.0 over drill 2.5; 0.05 to 0.20 is asked"],
  [2400, "bore 2.4 is 0.1 narrower than drill 2.5; 0.05 to 0.20 is asked"],
])("a bore of %i µm over drill 2.5: %s", (bore, fault) => {
  expect(boreFault(bore, 2500)).toBe(fault);
});
