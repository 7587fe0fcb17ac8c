import type { Catalogue } from "../model/catalogue.ts";
import type { DoubleNumber } from "../model/chain.ts";
import { inIdOrder } from "./in-id-order.ts";
import { systemInstruments } from "./system-instruments.ts";

/** Numbers that in one system are called for a screw and for a drill, or for two kinds of drill; in order of system and number, micrometres. */
export function doubleNumbers(catalogue: Catalogue): readonly DoubleNumber[] {
  return [...catalogue.systems.keys()].sort().flatMap((system) => {
    const drills = systemInstruments(catalogue, system).flatMap((one) =>
      one.kind === "drill"
        ? [{ id: one.id, what: `${one.use} drill` as const, number: one.diameter }]
        : [],
    );
    const screws = inIdOrder(catalogue.screws)
      .filter((screw) => screw.system === system)
      .map(({ id, major }) => ({ id, what: "screw" as const, number: major }));
    const all = [...screws, ...drills];
    return [...new Set(all.map(({ number }) => number))]
      .sort((a, b) => a - b)
      .map((number): DoubleNumber => {
        const bearers = all.filter((one) => one.number === number);
        return { system, number, bearers: bearers.map(({ id, what }) => ({ id, what })) };
      })
      .filter(({ bearers }) => new Set(bearers.map(({ what }) => what)).size > 1);
  });
}
