import type { Catalogue } from "../model/catalogue.ts";
import type { Chain, DrillTrap, Role } from "../model/chain.ts";
import type { Defined } from "../model/definition.ts";
import type { Instrument } from "../model/instrument.ts";
import { systemInstruments } from "./system-instruments.ts";

/** Which drill of a chain goes through which of its bores. */
const passing: readonly (readonly [bore: Role, drill: Role])[] = [
  ["sleeve", "pilot-drill"],
  ["guide", "pilot-drill"],
  ["insert", "pilot-drill"],
  ["gliding-guide", "gliding-drill"],
];

function belongings(chains: readonly Chain[]): ReadonlyMap<string, ReadonlySet<string>> {
  const belongs = new Map<string, Set<string>>();
  for (const { links } of chains) {
    const settled = (role: Role): string | undefined =>
      links.find((link) => link.role === role)?.instrument;
    for (const [bore, drill] of passing) {
      const [through, one] = [settled(bore), settled(drill)];
      if (through !== undefined && one !== undefined)
        belongs.set(through, (belongs.get(through) ?? new Set<string>()).add(one));
    }
  }
  return belongs;
}

function trapsOf(
  instruments: readonly Defined<Instrument>[],
  belongs: ReadonlyMap<string, ReadonlySet<string>>,
): readonly DrillTrap[] {
  const drills = instruments.flatMap((one) => (one.kind === "drill" ? [one] : []));
  const bored = instruments.flatMap((one) =>
    one.kind === "threaded-sleeve" || one.kind === "plain-guide" || one.kind === "reduction-insert"
      ? [one]
      : [],
  );
  return bored.flatMap(({ id: through, bore }) => {
    const own = belongs.get(through) ?? new Set<string>();
    return drills
      .filter(({ id, diameter }) => diameter <= bore && !own.has(id))
      .map(
        (drill): DrillTrap => ({
          drill: drill.id,
          through,
          belongs: [...own].sort(),
          play: bore - drill.diameter,
        }),
      );
  });
}

const key = ({ drill, through }: DrillTrap): string => `${through} ${drill}`;

/** Every drill of a system that passes a bore no chain puts it through, the least play first, then in id order. Play in micrometres. */
export function drillTraps(catalogue: Catalogue, chains: readonly Chain[]): readonly DrillTrap[] {
  const belongs = belongings(chains);
  const all = [...catalogue.systems.keys()].flatMap((system) =>
    trapsOf(systemInstruments(catalogue, system), belongs),
  );
  return [...new Map(all.map((trap) => [key(trap), trap])).values()].sort(
    (a, b) => a.play - b.play || (key(a) < key(b) ? -1 : 1),
  );
}
