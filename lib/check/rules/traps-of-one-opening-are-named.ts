import { type Catalogue, known } from "../../model/catalogue.ts";
import type { Derived, ScrewTrap } from "../../model/chain.ts";
import type { Rule } from "../../model/rule.ts";
import type { PairingView } from "../../model/sheet.ts";
import { fails, passes } from "../example.ts";
import { samplePairing, samplePairingRow } from "../sample-sheets.ts";

/** The traps of the holes a sheet shows in which the screw belongs in the other part of the same opening, and its head stays in this one. */
function besides(
  { openings, zones }: Catalogue,
  { chains, screwTraps }: Derived,
  { rows }: PairingView,
): readonly ScrewTrap[] {
  const ids = new Set(rows.flatMap((row) => row.chains));
  const shown = new Set(chains.filter(({ id }) => ids.has(id)).map(({ zone }) => zone));
  const permits = (zone: string, screw: string): boolean => {
    const facts = known(zones, zone);
    return "permits" in facts && facts.permits.includes(screw);
  };
  return screwTraps.filter(
    ({ zone, screw, head }) =>
      head === "lodges" &&
      shown.has(zone) &&
      [...openings.values()].some(
        (opening) =>
          opening.zones.includes(zone) &&
          opening.zones.some((other) => other !== zone && permits(other, screw)),
      ),
  );
}

/** Words as they are read, whatever letters are large and whatever is held together on its line. */
const read = (words: string): string => words.replaceAll("\u00a0", " ").toLowerCase();

const rows = [
  { ...samplePairingRow, chains: ["oblong-35--cortical-35--cortical-neutral"] },
  { ...samplePairingRow, chains: ["threaded-35--locking-35--locking-through-sleeve"] },
];
const trap = (subject: string, words: string) => ({ subject, words });
const named = [
  trap("Screw 3.5 locking", "in oblong 3.5: head lodges."),
  trap("Screw 3.5 cortical", "in threaded part 3.5: head lodges."),
];
const sheet = (lines: readonly { subject: string; words: string }[]) => ({
  sheets: [samplePairing(0, { rows, traps: { title: "Goes in, and is wrong.", lines } })],
});

/** A screw that stays in the wrong part of its own opening is named on the sheet that shows the hole. */
export const trapsOfOneOpeningAreNamed: Rule = {
  id: "traps-of-one-opening-are-named",
  severity: "stop",
  about: "sheet",
  summary:
    "A pairing sheet, unless it is for practice, names each screw that belongs in one part of an opening and also lodges in the other part; on a second size of paper without room for it that is told.",
  why: "Both parts lie side by side and both screws on the table: it goes in, it sits, and it holds nothing.",
  fix: "Split the system's sheet or choose a paper with more room; such traps stand first in the box.",
  source: "common practice",
  *check({ catalogue, derived, sheets = [] }) {
    for (const one of sheets) {
      if (one.kind !== "pairing" || one.practice !== undefined) continue;
      const missing = besides(catalogue, derived, one).flatMap(({ screw, zone }) => {
        const { called } = known(catalogue.screws, screw);
        const { name } = known(catalogue.zones, zone);
        const isNamed = one.traps.lines.some(
          ({ subject, words }) =>
            read(subject).includes(read(called)) && read(words).includes(read(name)),
        );
        return isNamed ? [] : `${called} lodges in ${name}`;
      });
      if (missing.length > 0)
        yield {
          file: one.origin,
          path: [],
          ...(one.format.id === one.formats[0] ? {} : { severity: "note" as const }),
          message: `Missing on ${one.id} (${one.format.name}): ${missing.join("; ")}`,
        };
    }
  },
  examples: [
    passes(
      "both named",
      "Locking in the oblong part, cortical in the threaded part.",
      {},
      sheet(named),
    ),
    fails(
      "one not named",
      "Cortical 3.5 in the threaded part is not named.",
      {},
      sheet(named.slice(0, 1)),
    ),
    fails("none named", "The box is empty.", {}, sheet([])),
  ],
};
