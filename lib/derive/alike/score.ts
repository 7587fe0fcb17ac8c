import type { Catalogue } from "../../model/catalogue.ts";
import type { LookAlike } from "../../model/chain.ts";
import type { LaidPlate } from "../../model/laid-plate.ts";
import type { Slot, Tray } from "../../model/tray.ts";
import type { Pair } from "./told.ts";
import { type Traits, traitsOf } from "./traits.ts";
import { apart, consequence, exposure, glance, lookWeights, unseen, unusable } from "./weights.ts";

const held = (slot: Slot): string =>
  slot.holds === "instrument" ? slot.instrument : slot.holds === "rack" ? slot.screw : slot.plate;

function touch(a: Slot, b: Slot): boolean {
  const meet = (axis: 0 | 1): boolean =>
    a.at[axis] <= b.at[axis] + b.span[axis] && b.at[axis] <= a.at[axis] + a.span[axis];
  return meet(0) && meet(1);
}

function nearIn({ slots }: Tray, a: string, b: string): keyof typeof exposure {
  const [as, bs] = [a, b].map((id) => slots.filter((slot) => held(slot) === id));
  if (!as?.length || !bs?.length) return "room";
  return as.some((one) => bs.some((other) => touch(one, other))) ? "adjacent" : "tray";
}

function close(a: number | undefined, b: number | undefined): number {
  if (a === undefined || b === undefined) return a === b ? 1 : 0;
  if (Math.abs(a - b) <= unseen) return 1;
  return Math.max(0, 1 - Math.abs(a - b) / (apart * Math.max(a, b)));
}

function look(a: Traits, b: Traits): number {
  const same = (one: unknown, other: unknown): number => (one === other ? 1 : 0);
  return (
    lookWeights.kind +
    lookWeights.size * close(a.size, b.size) +
    lookWeights.length * close(a.length, b.length) +
    lookWeights.mark * same(a.mark, b.mark) +
    lookWeights.sign * same(a.sign, b.sign) +
    lookWeights.joint * same(a.joint, b.joint)
  );
}

/** How easily a pair is taken for one another and what follows, 0 to 100, and how near the two lie in the trays. */
export function scored(catalogue: Catalogue, plates: readonly LaidPlate[], pair: Pair): LookAlike {
  const [a, b] = [traitsOf(catalogue, plates, pair.a), traitsOf(catalogue, plates, pair.b)];
  const found = [...catalogue.trays.values()].map((tray) => nearIn(tray, pair.a, pair.b));
  const near = (["adjacent", "tray"] as const).find((one) => found.includes(one)) ?? "room";
  const harm =
    Math.max(consequence[a.lost], consequence[b.lost]) *
    (a.works === b.works ? 1 : unusable) *
    (pair.atAGlance ? glance : 1);
  return { ...pair, near, score: Math.round(100 * look(a, b) * exposure[near] * harm) };
}
