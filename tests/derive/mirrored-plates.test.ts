import fc from "fast-check";
import { expect, it } from "vitest";
import { derive } from "../../lib/derive/derive.ts";
import type { Derived } from "../../lib/model/chain.ts";
import type { LaidPlate } from "../../lib/model/laid-plate.ts";
import { referenceLibrary } from "../fixtures/reference-library.ts";
import { change } from "./verdict-of.ts";

/** The chains of each hole of a plate, by its label. */
function chainsByHole({ chains }: Derived, { holes }: LaidPlate): ReadonlyMap<string, unknown> {
  return new Map(
    holes.map(({ label, zones }) => [
      label,
      chains.filter(({ zone }) => zones.some((one) => one.zone === zone)),
    ]),
  );
}

const tenths = (from: number, to: number) =>
  fc.integer({ min: from * 10, max: to * 10 }).map((length) => length / 10);
const hole = fc.record({
  opening: fc.constantFrom("t27", "c35", "p35", "wire"),
  at: fc.tuple(tenths(-2, 14), tenths(-8, 8)),
  region: fc.constantFrom("head", "shaft"),
  from: fc.constantFrom("start", "end"),
  threaded_end: fc.constantFrom("proximal", "distal"),
});
const holes = fc
  .array(hole, { maxLength: 6 })
  .map((all) => all.map((one, index) => ({ label: `H${index + 1}`, ...one })));

it("gives the mirrored plate the same chains at the same labels, and every point over on the other side", () => {
  fc.assert(
    fc.property(
      holes,
      tenths(-6, 6),
      fc.constantFrom("proximal", "distal", "away-from-middle", "towards-middle"),
      (placed, across, threadedEnd) => {
        const derived = derive(
          referenceLibrary([
            change("plate/lower-fibula-left", "holes").to(placed),
            change("plate/lower-fibula-left", "row", "first").to([20, across]),
            change("plate/lower-fibula-left", "row", "threaded_end").to(threadedEnd),
          ]),
        );
        const pairs = derived.plates
          .filter(({ plate }) => plate === "lower-fibula-left")
          .map((left) => {
            const right = derived.plates.find(
              ({ plate, holesInRow }) =>
                plate === "lower-fibula-right" && holesInRow === left.holesInRow,
            );
            if (right === undefined) throw new Error(`No right plate beside ${left.id}`);
            return [left, right] as const;
          });
        expect(pairs.length).toBeGreaterThan(0);
        for (const [left, right] of pairs) {
          expect(chainsByHole(derived, right)).toEqual(chainsByHole(derived, left));
          expect(right.holes.map(({ at: [x, y] }) => [x, 0 - y])).toEqual(
            left.holes.map(({ at: [x, y] }) => [x, y + 0]),
          );
          expect(right.holes.map(({ threadedEnd: end }) => end)).toEqual(
            left.holes.map(({ threadedEnd: end }) => end),
          );
        }
      },
    ),
    { numRuns: 60 },
  );
});
