import { known } from "../../model/catalogue.ts";
import { seenOn } from "../../model/look-alike.ts";
import { wholeMm } from "../../model/measure.ts";
import type { SheetView } from "../../model/sheet.ts";
import type { WarningLine } from "../../model/sheet-frame.ts";
import type { Claim, Fact } from "../../model/trace.ts";
import { doubleNumberLines, lookAlikeLines } from "../look-alikes.ts";
import { spoken } from "../spoken.ts";
import { phrasesOf } from "./phrases-of.ts";
import { factOf, type Traced, usesOf } from "./uses-of.ts";

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

/** What the boxes of a sheet warn of. */
export const warningClaims = (traced: Traced, sheet: SheetView): readonly Claim[] => [
  ...lookAlikeClaims(traced, sheet),
  ...doubleNumberClaims(traced, sheet),
  ...trapClaims(traced, sheet),
];
