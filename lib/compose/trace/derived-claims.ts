import { known } from "../../model/catalogue.ts";
import { seenOn } from "../../model/look-alike.ts";
import { wholeMm } from "../../model/measure.ts";
import { rackPieces } from "../../model/rack-pieces.ts";
import type { LengthView, SheetView } from "../../model/sheet.ts";
import type { WarningLine } from "../../model/sheet-frame.ts";
import type { Claim, Fact } from "../../model/trace.ts";
import { doubleNumberLines, lookAlikeLines } from "../look-alikes.ts";
import { slotFacts } from "../slot-facts.ts";
import { spoken } from "../spoken.ts";
import { phrasesOf } from "./phrases-of.ts";
import { factOf, type Traced, usesOf } from "./uses-of.ts";

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

/** The fields of a part that a tell begins with, in words of the part itself or of the registry. */
function toldBy(traced: Traced, id: string, tell: string): readonly Fact[] {
  const { catalogue } = traced;
  const kind = catalogue.instruments.has(id)
    ? "instrument"
    : catalogue.screws.has(id)
      ? "screw"
      : "plate";
  return [factOf(traced, kind, id), factOf(traced, "interfaces", catalogue.interfaces.id)].flatMap(
    (definition) =>
      phrasesOf(catalogue, definition)
        .filter(({ words }) => words.some((word) => word.length > 4 && tell.startsWith(word)))
        .map(({ path }) => ({ ...definition, path })),
  );
}

/** A line of a box whatever of it is held together. */
const told = (line: WarningLine): string => JSON.stringify(line).replaceAll("\u00a0", " ");

/** Pairs that look alike on this sheet, each with the feature that tells them apart. */
function lookAlikeClaims(traced: Traced, sheet: SheetView): readonly Claim[] {
  const printed = new Set("lookAlikes" in sheet ? sheet.lookAlikes.lines.map(told) : []);
  const held = new Set(
    sheet.kind === "tray" ? usesOf(traced, sheet).map(({ kind, id }) => `${kind}/${id}`) : [],
  );
  const isHeld = (id: string): boolean =>
    ["instrument", "screw", "plate"].some((kind) => held.has(`${kind}/${id}`));
  return traced.derived.lookAlikes.flatMap((pair) => {
    const { a, b } = pair;
    const [seenOnA, seenOnB] = [seenOn(pair, a), seenOn(pair, b)];
    return lookAlikeLines(traced, [pair])
      .filter((line) => printed.has(told(line)) || (isHeld(a) && isHeld(b)))
      .map(({ subject, other }) => ({
        what: `look-alikes: ${[subject, other?.subject ?? ""].join(" ").replaceAll(":", "").trim()}`,
        words: [seenOnA, seenOnB],
        facts: [...toldBy(traced, a, seenOnA), ...toldBy(traced, b, seenOnB)],
        how: "The first feature in which the two differ.",
      }));
  });
}

/** Numbers that are called for several kinds of thing, each with the sizes that share it. */
function doubleNumberClaims(traced: Traced, sheet: SheetView): readonly Claim[] {
  const lines = "lookAlikes" in sheet ? sheet.lookAlikes.lines : [];
  return traced.derived.doubleNumbers.flatMap((double): readonly Claim[] => {
    const [line] = doubleNumberLines(traced, [double]);
    if (!line || !lines.some((one) => told(one) === told(line))) return [];
    const facts = double.bearers.map(({ id, what }) =>
      factOf(traced, what === "screw" ? "screw" : "instrument", id, ["mark"]),
    );
    const how = "The same number is etched on or called out for each of them.";
    return [{ what: "double number", words: [line.subject, line.words], facts, how }];
  });
}

/** The example lengths and readings of cut views: lengths of the racks of the screws drawn. */
function sectionClaims(traced: Traced, sheet: SheetView): readonly Claim[] {
  const drawn = (sheet.sections ?? []).flatMap(({ figure, words }) => [
    words,
    ...[...figure.svg.matchAll(/<text\b[^>]*>([^<]*)<\/text>/g)].map(([, text = ""]) => text),
  ]);
  if (drawn.length === 0) return [];
  const screws = new Set(
    sheet.shows.flatMap((name) => {
      const [kind, id = ""] = [name.split("/")[0], name.slice(name.indexOf("/") + 1)];
      if (kind === "screw") return [id];
      return traced.derived.chains.filter((chain) => chain.id === id).map(({ screw }) => screw);
    }),
  );
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
  const shown = (kind: string): readonly string[] =>
    sheet.shows.flatMap((name) =>
      name.startsWith(`${kind}/`) ? [name.slice(kind.length + 1)] : [],
    );
  const facts = shown("case").flatMap((id) => {
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

/** The warnings of what goes in and is wrong, each with the sizes that let it. */
function trapClaims(traced: Traced, sheet: SheetView): readonly Claim[] {
  const { catalogue, derived } = traced;
  const lines = "traps" in sheet ? sheet.traps.lines : [];
  const spaced = (text: string): string => text.replaceAll("\u00a0", " ");
  return lines.flatMap((line): Claim[] => {
    const [subject, words] = [spaced(line.subject), spaced(line.words)];
    const screws = derived.screwTraps.filter(
      ({ screw, zone }) =>
        subject.toLowerCase().includes(known(catalogue.screws, screw).called.toLowerCase()) &&
        words.includes(known(catalogue.zones, zone).name),
    );
    const drills = derived.drillTraps.filter(
      ({ drill, through }) =>
        subject.toLowerCase().includes(spoken(known(catalogue.instruments, drill)).toLowerCase()) &&
        words.replace(/^pass(es)? /, "").startsWith(spoken(known(catalogue.instruments, through))),
    );
    const facts = [
      ...screws.flatMap(({ screw, zone }) => [
        factOf(traced, "screw", screw, ["major"]),
        factOf(traced, "screw", screw, ["head", "diameter"]),
        factOf(traced, "zone", zone, ["through"]),
      ]),
      ...drills.flatMap(({ drill, through, belongs }) => [
        factOf(traced, "instrument", drill, ["diameter"]),
        factOf(traced, "instrument", through, ["bore"]),
        ...belongs.map((id) => factOf(traced, "instrument", id, ["mark"])),
      ]),
    ];
    const how =
      drills.length > 0
        ? `Bore less drill: ${drills.map(({ play }) => `${wholeMm(play)} mm`).join(", ")} of free play; made for another drill.`
        : "The thread passes the hole, and the hole does not permit the screw.";
    return facts.length === 0
      ? []
      : [{ what: "goes in, and is wrong", words: [subject, words], facts, how }];
  });
}

/** What a sheet says that no single field says: read off several facts by a rule that is told. */
export function derivedClaims(traced: Traced, sheet: SheetView): readonly Claim[] {
  const own =
    sheet.kind === "lengths"
      ? sheet.columns.flatMap((column) => ladderClaims(traced, column))
      : sheet.kind === "tray" || sheet.kind === "labels"
        ? sheet.shows
            .filter((name) => name.startsWith("tray/"))
            .flatMap((name) => trayClaims(traced, name.slice("tray/".length)))
        : [];
  return [
    ...own,
    ...lookAlikeClaims(traced, sheet),
    ...doubleNumberClaims(traced, sheet),
    ...trapClaims(traced, sheet),
    ...sectionClaims(traced, sheet),
    ...soundClaims(traced, sheet),
    ...fetchedClaims(traced, sheet),
    ...pullClaims(traced, sheet),
  ];
}
