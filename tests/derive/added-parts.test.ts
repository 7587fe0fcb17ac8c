import fc from "fast-check";
import { expect, it } from "vitest";
import { derive } from "../../lib/derive/derive.ts";
import type { Chain, Derived } from "../../lib/model/chain.ts";
import { referenceLibrary } from "../fixtures/reference-library.ts";
import { change } from "./verdict-of.ts";

const source = { document: "pebblefin-ifu", section: "Table 1" };
const plain = derive(referenceLibrary());
const closed = (derived: Derived): ReadonlyMap<string, Chain> =>
  new Map(derived.chains.map((chain) => [chain.id, chain]));

/** A size in mm: one that the library uses, so that it often fits, or any other in range. */
const size = (from: number, to: number, ...used: readonly number[]) =>
  fc.oneof(
    fc.constantFrom(...used),
    fc.integer({ min: from * 1000, max: to * 1000 }).map((length) => length / 1000),
  );
const length = fc.constantFrom(50, 60, 110, 150);
const coupling = fc.constantFrom("shaft-small", "shaft-large", "drill-small");
const common = { name: fc.constant("added"), mark: fc.constant("9"), source: fc.constant(source) };
const use = fc.constantFrom("pilot", "gliding");
const foot = size(1, 14, 3.7, 5.6);
const ends = fc.uniqueArray(
  fc.record({
    name: fc.constantFrom("centred", "offset", "free"),
    foot,
    says: fc.constant("arrow, towards the fracture"),
  }),
  { minLength: 1, maxLength: 3, selector: ({ name }) => name },
);

/** An instrument of any kind that a chain can ask for. */
const instrument = fc.oneof(
  fc.record({
    ...common,
    kind: fc.constant("drill"),
    diameter: size(0.7, 8, 2, 2.5, 2.7, 3.5),
    use,
    length: fc.constant(180),
    reach: fc.constantFrom(40, 70, 112, 140),
    coupling,
  }),
  fc.record({
    ...common,
    kind: fc.constant("plain-guide"),
    bore: size(0.8, 9, 2.6, 3.6),
    length,
    rests_on: fc.constantFrom("plate-hole", "seat", "bone"),
    use,
    ends,
  }),
  fc.record({
    ...common,
    kind: fc.constant("threaded-sleeve"),
    thread: fc.constantFrom("th-27", "th-35"),
    bore: size(0.8, 9, 2.1, 2.8),
    outer: fc.constant(6),
    length: fc.constant(36),
  }),
  fc.record({
    ...common,
    kind: fc.constant("reduction-insert"),
    outer: size(1.5, 12, 3.4, 3.5),
    bore: size(0.8, 9, 2.6),
    length: fc.constant(48),
  }),
  fc.record({
    ...common,
    kind: fc.constant("depth-gauge"),
    scale: fc.constantFrom({ from: 10, to: 70, step: 1 }, { from: 10, to: 40, step: 1 }),
    hook: size(0.5, 6, 1.7),
    reads: fc.constantFrom("screw-length", "bare-depth"),
    seat: fc.constantFrom("plate-hole", "bone", "sleeve"),
    length: fc.constant(180),
  }),
  fc.record({
    ...common,
    kind: fc.constant("tap"),
    diameter: size(1, 8, 2.7, 3.5, 4),
    pitch: size(0.3, 3.5, 1, 1.25, 1.75),
    length,
    coupling,
  }),
  fc.record({
    ...common,
    kind: fc.constant("driver-shaft"),
    drive: fc.constantFrom("hexalobular-10", "hexalobular-20", "hexalobular-30"),
    coupling,
    length,
  }),
  fc.record({ ...common, kind: fc.constant("handle"), coupling, length }),
  fc.record({
    ...common,
    kind: fc.constant("torque-limiter"),
    torque: size(0.2, 8, 0.9, 1.6),
    coupling_in: coupling,
    coupling_out: coupling,
    hand_only: fc.constant(true),
    signal: fc.constant("one click"),
    length,
  }),
);
const named = fc.constantFrom("a-part", "m-part", "z-part");

it("never changes a chain for an added instrument in silence: it stays, it is open and names the new one, or it had none", () => {
  fc.assert(
    fc.property(instrument, named, (facts, id) => {
      const grown = derive(referenceLibrary([change(`instrument/${id}`).to(facts)]));
      const after = closed(grown);
      const gaps = new Map(grown.gaps.map((gap) => [`${gap.chain} ${gap.role}`, gap]));
      const opened = new Set(grown.gaps.map(({ chain }) => chain));
      for (const gap of grown.gaps) expect(gap.fitting).toContain(id);
      for (const { id: chain, links } of plain.chains)
        for (const { role, instrument: before } of links) {
          const now = after.get(chain)?.links.find((link) => link.role === role)?.instrument;
          if (now === before) continue;
          const isTold = gaps.has(`${chain} ${role}`) || opened.has(chain);
          const isNew = before === undefined && now === id;
          expect(isTold || isNew, `${chain} ${role}: ${before} becomes ${now}`).toBe(true);
        }
    }),
    { numRuns: 150 },
  );
});

it("keeps every chain for an added instrument of another system", () => {
  fc.assert(
    fc.property(instrument, (facts) => {
      const catalogue = referenceLibrary([change("instrument/a-part").to(facts)]);
      const moved = new Map(
        [...catalogue.instruments].map(([id, one]) => [
          id,
          id === "a-part" ? { ...one, system: "gatepost" } : one,
        ]),
      );
      const grown = derive({ ...catalogue, instruments: moved });
      expect([grown.chains, grown.gaps]).toEqual([plain.chains, plain.gaps]);
    }),
    { numRuns: 60 },
  );
});

it("keeps every chain for an added screw that no hole permits", () => {
  const facts = referenceLibrary().screws.get("cortical-35");
  fc.assert(
    fc.property(fc.integer({ min: 1000, max: 8000 }), named, (major, id) => {
      const catalogue = referenceLibrary();
      if (facts === undefined) throw new Error("The library has no cortical-35");
      const screws = new Map([...catalogue.screws, [id, { ...facts, id, major }]]);
      const grown = derive({ ...catalogue, screws });
      expect([grown.chains, grown.gaps]).toEqual([plain.chains, plain.gaps]);
    }),
    { numRuns: 30 },
  );
});
