import { known } from "../model/catalogue.ts";
import type { Chain, ChainGap, Link, Role } from "../model/chain.ts";
import type { Defined } from "../model/definition.ts";
import type { Instrument } from "../model/instrument.ts";
import type { Query } from "../model/recipe.ts";
import { askedRoles } from "./asked-roles.ts";
import { judge } from "./judge.ts";
import type { Work } from "./links/ask.ts";
import { systemInstruments } from "./system-instruments.ts";

/** What must be settled before a role can be judged: a stack of shaft, limiter and handle joins end to end. */
const joins: Partial<Record<Role, readonly Role[]>> = {
  limiter: ["driver"],
  handle: ["driver", "limiter"],
};
const lastSettled: readonly Role[] = ["driver", "limiter", "handle"];

const isRequired = (role: Role, { screw }: Work): boolean =>
  role === "tap" ? !screw.self_tapping : role !== "countersink";

/** The chain of one screw in one zone by one technique, and what keeps it open. A link that nothing or more than one thing answers has no instrument.
 * Links stand in hand-over order, with the stack of driver, limiter and handle last. */
export function closeChain(work: Work): {
  readonly chain: Chain;
  readonly gaps: readonly ChainGap[];
} {
  const { catalogue, zone, screw, recipe } = work;
  const names = { system: zone.system, zone: zone.id, screw: screw.id, recipe: recipe.id };
  const id = `${zone.id}--${screw.id}--${recipe.id}`;
  const instruments = systemInstruments(catalogue, zone.system);
  const asked = askedRoles(recipe);
  const settled = new Map<Role, Defined<Instrument>>();
  const gaps: ChainGap[] = [];

  const settle = (role: Role, query: Query): Link => {
    const required = isRequired(role, work);
    const link = { role, query, required, ...("end" in query ? { end: query.end } : {}) };
    const waits = joins[role]?.some((other) => asked.has(other) && !settled.has(other));
    if (waits) return { ...link, verdicts: [] };
    const verdicts = judge(instruments, { ...work, query, settled });
    const [first, ...more] = verdicts
      .filter(({ fits }) => fits)
      .map(({ instrument }) => instrument);
    if (first !== undefined && more.length === 0) {
      settled.set(role, known(catalogue.instruments, first));
      return { ...link, instrument: first, verdicts };
    }
    if (required || first !== undefined)
      gaps.push({
        chain: id,
        ...names,
        role,
        fitting: first === undefined ? [] : [first, ...more],
        verdicts,
      });
    return { ...link, verdicts };
  };

  const links = new Map(
    [...asked]
      .filter(([role]) => !lastSettled.includes(role))
      .map(([role, query]) => [role, settle(role, query)]),
  );
  for (const role of lastSettled) {
    const query = asked.get(role);
    if (query) links.set(role, settle(role, query));
  }
  return { chain: { id, ...names, links: [...links.values()] }, gaps };
}
