import { expect, it } from "vitest";
import { rackLengths } from "../../lib/model/rack-lengths.ts";

it.each([
  ["one run", [{ from: 10_000, to: 16_000, step: 2000 }], [10_000, 12_000, 14_000, 16_000]],
  [
    "a run whose end is no step",
    [{ from: 10_000, to: 15_000, step: 2000 }],
    [10_000, 12_000, 14_000],
  ],
  [
    "runs that meet, the common length once",
    [
      { from: 10_000, to: 14_000, step: 2000 },
      { from: 14_000, to: 24_000, step: 5000 },
    ],
    [10_000, 12_000, 14_000, 19_000, 24_000],
  ],
  [
    "runs written longest first",
    [
      { from: 20_000, to: 25_000, step: 5000 },
      { from: 10_000, to: 12_000, step: 2000 },
    ],
    [10_000, 12_000, 20_000, 25_000],
  ],
])("lists %s", (_, lengths, expected) => {
  expect(rackLengths({ lengths })).toEqual(expected);
});
