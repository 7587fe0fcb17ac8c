import fc from "fast-check";
import { expect, it } from "vitest";
import { derive } from "../../lib/derive/derive.ts";
import type { Catalogue } from "../../lib/model/catalogue.ts";
import type { Derived } from "../../lib/model/chain.ts";
import { referenceLibrary } from "../fixtures/reference-library.ts";
import { change } from "./verdict-of.ts";

const plain = derive(referenceLibrary());

/** Lists that are sets: what they name in which order says nothing. */
const sets = new Set(["permits", "zone_kinds", "screw_classes", "needs", "drives", "variants"]);

/** The catalogue with its maps, the keys of its objects and its sets in an order that the seed decides. */
function shuffled(catalogue: Catalogue, seed: number): Catalogue {
  let state = seed;
  const next = (): number => (state = (state * 1_103_515_245 + 12_345) % 2_147_483_648);
  const stir = <T>(list: readonly T[]): T[] =>
    list
      .map((entry) => ({ entry, at: next() }))
      .sort((a, b) => a.at - b.at)
      .map(({ entry }) => entry);
  const deep = (value: unknown, key = ""): unknown => {
    if (value instanceof Map)
      return new Map(stir([...value]).map(([id, inner]) => [id, deep(inner)]));
    if (Array.isArray(value)) {
      const inner = value.map((one) => deep(one));
      return sets.has(key) ? stir(inner) : inner;
    }
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(
      stir(Object.entries(value)).map(([name, inner]) => [name, deep(inner, name)]),
    );
  };
  return deep(catalogue) as Catalogue;
}

const answers = ({ chains }: Derived): ReadonlyMap<string, string> =>
  new Map(
    chains.flatMap(({ id, links }) =>
      links.flatMap(({ role, instrument }): [string, string][] =>
        instrument ? [[`${id} ${role}`, instrument]] : [],
      ),
    ),
  );

it("closes every chain of the reference library", () => {
  expect(plain.gaps).toEqual([]);
  expect(plain.chains.map(({ id }) => id)).toEqual([
    "oblong-35--cortical-35--cortical-compression",
    "oblong-35--cortical-35--cortical-neutral",
    "oblong-35--cortical-35--lag-through-plate",
    "plain-35--cancellous-40--cortical-neutral",
    "plain-35--cortical-35--cortical-neutral",
    "plain-35--cortical-35--lag-through-plate",
    "threaded-27--locking-27--locking-through-sleeve",
    "threaded-35--locking-35--locking-through-sleeve",
  ]);
});

it("derives the same whatever order files, keys and sets are read in", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
      expect(derive(shuffled(referenceLibrary(), seed))).toEqual(plain);
    }),
    { numRuns: 25 },
  );
});

it("gives a verdict with a reason on every candidate of the kind that is asked", () => {
  const catalogue = referenceLibrary();
  for (const { links } of plain.chains) {
    for (const { query, verdicts, instrument } of links) {
      const kind = [...catalogue.instruments.values()]
        .filter((one) => one.kind === query.kind)
        .map(({ id }) => id);
      expect(verdicts.map((verdict) => verdict.instrument)).toEqual(kind);
      for (const verdict of verdicts)
        expect([verdict.fits, verdict.because.length === 0]).toEqual([
          verdict.instrument === instrument,
          verdict.instrument === instrument,
        ]);
    }
  }
});

const drill = {
  kind: "drill",
  name: "drill",
  mark: "0",
  length: 150,
  coupling: "drill-small",
  source: { document: "pebblefin-ifu", section: "Table 1" },
};

it("never changes a chain for another drill: the chain stays, or it is open and names both", () => {
  const diameter = fc.integer({ min: 700, max: 8000 }).map((length) => length / 1000);
  const sized = fc.oneof(diameter, fc.constantFrom(2, 2.5, 2.7, 3.5));
  fc.assert(
    fc.property(
      sized,
      fc.constantFrom("pilot", "gliding"),
      fc.constantFrom("a-drill", "z-drill"),
      (size, use, id) => {
        const grown = derive(
          referenceLibrary([
            change(`instrument/${id}`).to({ ...drill, diameter: size, use, reach: 100 }),
          ]),
        );
        const open = new Set(grown.gaps.map(({ chain, role }) => `${chain} ${role}`));
        for (const { fitting } of grown.gaps) expect(fitting).toContain(id);
        for (const [link, instrument] of answers(plain))
          expect([instrument, undefined]).toContain(
            open.has(link) ? undefined : answers(grown).get(link),
          );
        for (const link of answers(plain).keys())
          expect(answers(grown).has(link)).toBe(!open.has(link));
      },
    ),
    { numRuns: 60 },
  );
});

it("is open, never settled by order, where two drills fit", () => {
  const { gaps } = derive(
    referenceLibrary([change("instrument/drill-27-gliding", "use").to("pilot")]),
  );
  expect(gaps.map(({ chain, role, fitting }) => [chain, role, fitting])).toEqual([
    [
      "threaded-35--locking-35--locking-through-sleeve",
      "pilot-drill",
      ["drill-27-gliding", "drill-27-pilot"],
    ],
  ]);
});

it("sees general instruments and none of another system", () => {
  const move = (to: string) => {
    const catalogue = referenceLibrary();
    const instruments = new Map(
      [...catalogue.instruments].map(([id, one]) => [
        id,
        id === "sleeve-35" ? { ...one, system: to } : one,
      ]),
    );
    return derive({ ...catalogue, instruments }).gaps.map(({ role }) => role);
  };
  expect(move("general")).toEqual([]);
  expect(move("gatepost")).toEqual(["sleeve"]);
});

it("asks for a technique only where hole and screw have what it needs", () => {
  const still = derive(
    referenceLibrary([
      change("zone/oblong-35", "travel").to(0),
      change("screw/cortical-35", "gliding").to(undefined),
    ]),
  );
  expect(
    still.chains.filter(
      ({ recipe }) => recipe !== "cortical-neutral" && recipe !== "locking-through-sleeve",
    ),
  ).toEqual([]);
});
