import { known } from "../model/catalogue.ts";
import type { Chain, DrillTrap, ScrewTrap } from "../model/chain.ts";
import type { WarningLine } from "../model/sheet-frame.ts";
import type { Composing } from "./composing.ts";
import { grouped } from "./grouped.ts";
import { capital, listed, spoken, uncapital } from "./spoken.ts";
import { unparted } from "./unparted.ts";

function inSameOpening({ catalogue }: Composing, trap: ScrewTrap): boolean {
  return [...catalogue.openings.values()].some(
    ({ zones }) =>
      zones.includes(trap.zone) &&
      zones.some((other) => {
        const zone = known(catalogue.zones, other);
        return other !== trap.zone && "permits" in zone && zone.permits.includes(trap.screw);
      }),
  );
}

/** Harm in order: what drills a wrong hole for a locking screw unnoticed, in its sleeve; a screw that belongs in the next part of the same opening; a wrong drill in a guide; other screws of the system;
 * a drill that is as wide as the right one; screws of another system. Of each, a head that lodges is noticed later than one that falls through. */
const harm = {
  wrongInSleeve: 0,
  sameOpening: 1,
  wrongInGuide: 2,
  sameSystem: 3,
  asWide: 5,
  otherSystem: 6,
} as const;

/** What becomes of one screw, and of several. */
const outcome: Readonly<Record<ScrewTrap["head"], readonly [string, string]>> = {
  lodges: ["head lodges", "heads lodge"],
  "falls-through": ["falls through", "fall through"],
};

type Ranked = { readonly rank: number; readonly line: WarningLine };

function screwRank(composing: Composing, trap: ScrewTrap): number {
  if (inSameOpening(composing, trap)) return harm.sameOpening;
  const { sameSystem, otherSystem } = harm;
  const known = trap.screwSystem === trap.zoneSystem ? sameSystem : otherSystem;
  return known + (trap.head === "lodges" ? 0 : 1);
}

function screwLines(composing: Composing, traps: readonly ScrewTrap[]): readonly Ranked[] {
  const { catalogue } = composing;
  const rank = (trap: ScrewTrap): number => screwRank(composing, trap);
  const byScrew = grouped(traps, (trap) => `${rank(trap)} ${trap.head} ${trap.screw}`);
  const lines = [...byScrew.values()].map((group) => {
    const { screw, screwSystem, zoneSystem, head } = group[0];
    const away =
      screwSystem === zoneSystem
        ? ""
        : ` (${catalogue.systems.get(screwSystem)?.name ?? screwSystem})`;
    const zones = listed(
      [...new Set(group.map(({ zone }) => unparted(known(catalogue.zones, zone).name)))].sort(),
    );
    return {
      rank: rank(group[0]),
      name: `${unparted(known(catalogue.screws, screw).called)}${away}`,
      zones,
      head,
    };
  });
  return [...grouped(lines, (line) => `${line.rank} ${line.zones} ${line.head}`).entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, same]) => {
      const { zones, head, rank } = same[0];
      const names = same.map(({ name }) => name).sort();
      return {
        rank,
        line: {
          subject: listed(names.map((name, at) => (at === 0 ? name : uncapital(name)))),
          words: `in ${zones}: ${unparted(outcome[head][names.length > 1 ? 1 : 0])}.`,
        },
      };
    });
}

function drillRank({ catalogue }: Composing, { drill, through, belongs }: DrillTrap): number {
  const width = (id: string): number | undefined => {
    const instrument = known(catalogue.instruments, id);
    return instrument.kind === "drill" ? instrument.diameter : undefined;
  };
  if (belongs.some((own) => width(own) === width(drill))) return harm.asWide;
  const sleeve = known(catalogue.instruments, through).kind === "threaded-sleeve";
  return sleeve ? harm.wrongInSleeve : harm.wrongInGuide;
}

function drillLines(composing: Composing, traps: readonly DrillTrap[]): readonly Ranked[] {
  const name = (id: string): string => unparted(spoken(known(composing.catalogue.instruments, id)));
  const near = [...traps].sort(
    (a, b) => a.play - b.play || (a.drill + a.through < b.drill + b.through ? -1 : 1),
  );
  const rank = (trap: DrillTrap): number => drillRank(composing, trap);
  return [...grouped(near, (trap) => `${rank(trap)} ${trap.through}`).values()].map((group) => {
    const { through, belongs } = group[0];
    const made = belongs.length === 0 ? "" : `, made for ${listed(belongs.map(name))}`;
    const drills = listed(group.map(({ drill }) => name(drill)));
    const passes = group.length > 1 ? "pass" : "passes";
    return {
      rank: rank(group[0]),
      line: { subject: capital(drills), words: `${passes} ${name(through)}${made}.` },
    };
  });
}

/** What goes in and is wrong where holes of these zones are filled by these chains, the most harmful first: drills that pass a bore made for another, and screws that go through a hole they do not belong in. */
export function trapLines(
  composing: Composing,
  zones: readonly string[],
  chains: readonly Chain[],
): readonly WarningLine[] {
  const { screwTraps, drillTraps } = composing.derived;
  const handled = new Set(
    chains.flatMap(({ links }) => links.flatMap(({ instrument }) => instrument ?? [])),
  );
  return [
    ...drillLines(
      composing,
      drillTraps.filter(({ through }) => handled.has(through)),
    ),
    ...screwLines(
      composing,
      screwTraps.filter(({ zone }) => zones.includes(zone)),
    ),
  ]
    .sort((a, b) => a.rank - b.rank)
    .map(({ line }) => line);
}
