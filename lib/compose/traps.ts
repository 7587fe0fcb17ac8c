import { known } from "../model/catalogue.ts";
import type { DrillTrap, ScrewTrap } from "../model/chain.ts";
import type { WarningLine } from "../model/sheet.ts";
import type { Composing } from "./composing.ts";
import { grouped } from "./grouped.ts";
import { capital, listed, spoken } from "./spoken.ts";

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

function rank(composing: Composing, trap: ScrewTrap): number {
  if (inSameOpening(composing, trap)) return 0;
  return (trap.screwSystem === trap.zoneSystem ? 1 : 3) + (trap.head === "lodges" ? 0 : 1);
}

/** Screws that go through a hole they do not belong in, worst first: the neighbour part of one opening, then the same system. */
export function screwTrapLines(
  composing: Composing,
  traps: readonly ScrewTrap[],
): readonly WarningLine[] {
  const { catalogue } = composing;
  const byScrew = grouped(traps, (trap) => `${rank(composing, trap)} ${trap.head} ${trap.screw}`);
  const lines = [...byScrew.values()].map((group) => {
    const { screw, screwSystem, zoneSystem, head } = group[0];
    const away =
      screwSystem === zoneSystem
        ? ""
        : ` (${catalogue.systems.get(screwSystem)?.name ?? screwSystem})`;
    const zones = listed(
      [...new Set(group.map(({ zone }) => known(catalogue.zones, zone).name))].sort(),
    );
    return {
      rank: rank(composing, group[0]),
      name: `${known(catalogue.screws, screw).called}${away}`,
      zones,
      head,
    };
  });
  return [...grouped(lines, (line) => `${line.rank} ${line.zones} ${line.head}`).entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, same]) => {
      const { zones, head } = same[0];
      return {
        subject: listed(same.map(({ name }) => name).sort()),
        words: `in ${zones}: ${head === "lodges" ? "head lodges" : "falls through"}.`,
      };
    });
}

/** Drills that pass a bore made for another drill, the closest first. */
export function drillTrapLines(
  { catalogue }: Composing,
  traps: readonly DrillTrap[],
): readonly WarningLine[] {
  const name = (id: string): string => spoken(known(catalogue.instruments, id));
  return [...traps]
    .sort((a, b) => a.play - b.play || (a.drill + a.through < b.drill + b.through ? -1 : 1))
    .map(({ drill, through, belongs }) => {
      const made = belongs.length === 0 ? "" : `, made for ${listed(belongs.map(name))}`;
      return { subject: capital(name(drill)), words: `passes ${name(through)}${made}.` };
    });
}

/** Two ranked lists in one, taken in turn. */
export function inTurn<T>(a: readonly T[], b: readonly T[]): readonly T[] {
  return Array.from({ length: Math.max(a.length, b.length) }, (_, index) => [a[index], b[index]])
    .flat()
    .filter((line) => line !== undefined);
}
