import { known } from "../../model/catalogue.ts";
import { wholeMm } from "../../model/measure.ts";
import { rackPieces } from "../../model/rack-pieces.ts";
import type { LengthView, SheetView } from "../../model/sheet.ts";
import type { Claim } from "../../model/trace.ts";
import { slotFacts } from "../slot-facts.ts";
import { spoken } from "../spoken.ts";
import { factOf, idsShown, type Traced } from "./uses-of.ts";
import { warningClaims } from "./warning-claims.ts";

/** The readings of one ladder: from the rack, the gauge's scale and the policy of the system. */
function ladderClaims(
  traced: Traced,
  { screw, called, policy, entries }: LengthView["columns"][number],
): readonly Claim[] {
  const { catalogue, derived } = traced;
  const table = derived.lengthTables.get(screw);
  if (table === undefined) return [];
  const { system, class: kind } = known(catalogue.screws, screw);
  const at = ["length_policy", kind === "locking" ? "locking" : "plain_head"];
  const facts = [
    factOf(traced, "screw", screw, ["lengths"]),
    factOf(traced, "instrument", table.gauge, ["scale"]),
    factOf(traced, "system", system, [...at, "add"]),
    factOf(traced, "system", system, [...at, "overshoot_below"]),
  ];
  return [
    { what: `policy for ${called}`, words: [policy], facts, how: "As the system states it." },
    {
      what: `readings for ${called}`,
      words: entries.flatMap(({ reads, next, words }) => [reads, next, words]),
      facts,
      how: `For each step of the gauge's scale, the next length of the rack by the policy: ${policy}`,
    },
  ];
}

const piecesWords = (pieces: number): readonly string[] => [
  `× ${pieces}`,
  `×${pieces}`,
  String(pieces),
];

/** Words as they may be broken in a drawing: each beginning that ends in a number, and the whole. */
const lineStarts = (words: string): readonly string[] =>
  words
    .split(" ")
    .map((_, index, all) => all.slice(0, index + 1).join(" "))
    .filter((start) => /\d$/.test(start) || start === words);

/** The pieces of each slot; a rack's are counted length by length. */
function trayClaims(traced: Traced, id: string): readonly Claim[] {
  const { catalogue } = traced;
  const tray = known(catalogue.trays, id);
  const named = `${tray.name}, ${tray.mark}, revision ${tray.revision}`;
  const label = {
    what: "tray named on a label",
    words: [named, `revision ${tray.revision}`],
    facts: [factOf(traced, "tray", id, ["revision"])],
  };
  const slots = tray.slots.flatMap((slot, index): Claim[] => {
    const { what, mark, pieces } = slotFacts(catalogue, slot);
    const own = factOf(traced, "tray", id, ["slots", index]);
    const claim = {
      what: `slot ${slot.slot}`,
      words: [slot.slot, `marked ${mark}`, ...piecesWords(pieces), ...lineStarts(what)],
    };
    if (slot.holds !== "rack") return [{ ...claim, facts: [own] }];
    const lengths = rackPieces(known(catalogue.screws, slot.screw), slot);
    return [
      {
        what: claim.what,
        words: [
          ...claim.words,
          ...lengths.flatMap(({ length, pieces: each }) => [wholeMm(length), ...piecesWords(each)]),
        ],
        facts: [
          own,
          factOf(traced, "screw", slot.screw, ["called"]),
          factOf(traced, "screw", slot.screw, ["lengths"]),
        ],
        how: "The pieces of each length of the rack, and their sum.",
      },
    ];
  });
  return [label, ...slots];
}

/** The example lengths and readings of cut views: lengths of the racks of the screws drawn. */
function sectionClaims(traced: Traced, sheet: SheetView): readonly Claim[] {
  const drawn = (sheet.sections ?? []).flatMap(({ figure, words }) => [
    words,
    ...[...figure.svg.matchAll(/<text\b[^>]*>([^<]*)<\/text>/g)].map(([, text = ""]) => text),
  ]);
  if (drawn.length === 0) return [];
  const chains = new Set(idsShown(sheet, "chain"));
  const screws = new Set([
    ...idsShown(sheet, "screw"),
    ...traced.derived.chains.flatMap(({ id, screw }) => (chains.has(id) ? [screw] : [])),
  ]);
  const facts = [...screws].map((id) => factOf(traced, "screw", id, ["lengths"]));
  const how = "A length of the rack, or a reading for which the rack has none.";
  return [{ what: "cut view", words: [...new Set(drawn)], facts, how }];
}

/** Where the parts lie that a mishap has fetched: the slots of the trays. */
function fetchedClaims(traced: Traced, sheet: SheetView): readonly Claim[] {
  if (sheet.kind !== "mishaps") return [];
  const { trays, instruments } = traced.catalogue;
  return [...trays.values()].flatMap(({ id, slots }) =>
    slots.flatMap((slot, index): readonly Claim[] => {
      if (slot.holds !== "instrument") return [];
      const part = spoken(known(instruments, slot.instrument));
      const words = [`${part} in ${slot.slot} (${slot.quantity})`];
      const facts = [
        factOf(traced, "tray", id, ["slots", index]),
        factOf(traced, "instrument", slot.instrument, ["mark"]),
      ];
      return [{ what: `slot ${slot.slot}`, words, facts }];
    }),
  );
}

/** The pieces that a case pulls: the holes of its plan, of what lies in the lengths planned for them. */
function pullClaims(traced: Traced, sheet: SheetView): readonly Claim[] {
  if (sheet.kind !== "case") return [];
  const facts = idsShown(sheet, "case").flatMap((id) => {
    const { site } = known(traced.catalogue.cases, id);
    const trays = known(traced.catalogue.sites, site).trays.map(({ tray }) => tray);
    return [
      factOf(traced, "case", id, ["plan"]),
      factOf(traced, "site", site, ["trays"]),
      ...trays.map((tray) => factOf(traced, "tray", tray, ["slots"])),
    ];
  });
  const how =
    "One for each hole of the plan, one of each instrument; of the pieces that the tray lists in the planned lengths, those seen empty left out.";
  return sheet.pull.map(({ what, pieces }) => ({
    what: `pull ${what}`,
    words: [what, pieces],
    facts,
    how,
  }));
}

/** Readings and lengths that sound alike, said beside the readings. */
function soundClaims(traced: Traced, sheet: SheetView): readonly Claim[] {
  if (sheet.kind !== "lengths") return [];
  const facts = sheet.columns.flatMap(({ screw }) => {
    const gauge = traced.derived.lengthTables.get(screw)?.gauge;
    return [
      factOf(traced, "screw", screw, ["lengths"]),
      ...(gauge === undefined ? [] : [factOf(traced, "instrument", gauge, ["scale"])]),
    ];
  });
  const how =
    "Readings of these gauges and lengths of these racks whose words are easily misheard for one another.";
  return [{ what: "sounds alike", words: [sheet.deadNote], facts, how }];
}

/** What a sheet says that no single field says: read off several facts by a rule that is told. */
export function derivedClaims(traced: Traced, sheet: SheetView): readonly Claim[] {
  const own =
    sheet.kind === "lengths"
      ? sheet.columns.flatMap((column) => ladderClaims(traced, column))
      : sheet.kind === "tray" || sheet.kind === "labels"
        ? idsShown(sheet, "tray").flatMap((id) => trayClaims(traced, id))
        : [];
  return [
    ...own,
    ...warningClaims(traced, sheet),
    ...sectionClaims(traced, sheet),
    ...soundClaims(traced, sheet),
    ...fetchedClaims(traced, sheet),
    ...pullClaims(traced, sheet),
  ];
}
