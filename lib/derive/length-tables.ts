import { type Catalogue, known } from "../model/catalogue.ts";
import type { Chain, LengthTable, ReadingAnswer } from "../model/chain.ts";
import type { Um } from "../model/measure.ts";
import { rackLengths } from "../model/rack-lengths.ts";
import type { LengthPolicy } from "../model/system.ts";
import { inIdOrder } from "./in-id-order.ts";

/** What a rack answers to one target length, micrometres. Never a choice between two lengths. */
function answer(target: Um, rack: readonly Um[], tolerated: Um): ReadingAnswer {
  const [shortest, longest] = [rack[0] ?? 0, rack.at(-1) ?? 0];
  if (target < shortest) return { kind: "below", shortest };
  const next = rack.find((length) => length >= target);
  if (next === undefined) return { kind: "above", longest };
  const over = next - target;
  if (over === 0 || over < tolerated) return { kind: "next", length: next, over };
  const shorter = rack.findLast((length) => length < target) ?? shortest;
  return { kind: "gap", shorter, longer: next, short: target - shorter, long: over };
}

/** The one gauge that measures for a screw, whatever the hole and technique; undefined where there are several. */
function gaugeOf(screw: string, chains: readonly Chain[]): string | undefined {
  const gauges = chains
    .filter((chain) => chain.screw === screw)
    .flatMap(({ links }) => links.find(({ role }) => role === "gauge")?.instrument ?? []);
  const [first, ...others] = new Set(gauges);
  return others.length === 0 ? first : undefined;
}

function policyOf(
  { systems }: Catalogue,
  system: string,
  isLocking: boolean,
): LengthPolicy | undefined {
  const policy = systems.get(system)?.length_policy;
  return isLocking ? policy?.locking : policy?.plain_head;
}

/** The reading-to-length table of each screw whose system states a policy for what its gauge reads; no policy, no table. Micrometres. */
export function lengthTables(
  catalogue: Catalogue,
  chains: readonly Chain[],
): ReadonlyMap<string, LengthTable> {
  const tables = inIdOrder(catalogue.screws).flatMap((screw): LengthTable[] => {
    const policy = policyOf(catalogue, screw.system, screw.class === "locking");
    const id = gaugeOf(screw.id, chains);
    const gauge = id === undefined ? undefined : known(catalogue.instruments, id);
    if (!policy || gauge?.kind !== "depth-gauge" || gauge.reads !== policy.datum) return [];
    const { from, to, step } = gauge.scale;
    const rack = rackLengths(screw);
    const readings = Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, index) => {
      const reading = from + index * step;
      return { reading, answer: answer(reading + policy.add, rack, policy.overshoot_below) };
    });
    return [{ screw: screw.id, gauge: gauge.id, add: policy.add, readings }];
  });
  return new Map(tables.map((table) => [table.screw, table]));
}
