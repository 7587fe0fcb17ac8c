import type { Catalogue } from "../../model/catalogue.ts";
import type { Defined } from "../../model/definition.ts";
import type { Instrument } from "../../model/instrument.ts";
import { mm, nm, wholeMm } from "../../model/measure.ts";
import type { Plate } from "../../model/plate.ts";
import type { Screw } from "../../model/screw.ts";
import type { Fact } from "../../model/trace.ts";
import { grouped } from "../grouped.ts";
import { nounAndNumber, spoken, tellTale } from "../spoken.ts";

/** How one field of a definition is said on paper. */
export type Phrase = {
  readonly what: string;
  readonly words: readonly string[];
  readonly path: Fact["path"];
};

const phrase = (what: string, path: Fact["path"], ...words: readonly string[]): Phrase => ({
  what,
  path,
  words,
});

function screwPhrases({ called, name, mark, pitch }: Screw): Phrase[] {
  return [
    phrase("called out", ["called"], called, called.replace(/^Screw /, "")),
    phrase("name", ["name"], name),
    phrase("mark", ["mark"], mark, `etched "${mark}"`),
    phrase("thread pitch", ["pitch"], `thread pitch ${mm(pitch)} mm`),
  ];
}

function sizePhrases(tool: Instrument): Phrase[] {
  switch (tool.kind) {
    case "plain-guide":
      return [phrase("foot", ["ends", 0, "foot"], `foot ${mm(tool.ends[0]?.foot ?? 0)} mm wide`)];
    case "reduction-insert":
      return [phrase("outside", ["outer"], `outside ${mm(tool.outer)} mm wide`)];
    case "tap":
      return [phrase("thread pitch", ["pitch"], `thread pitch ${mm(tool.pitch)} mm`)];
    case "torque-limiter":
      return [
        phrase(
          "torque",
          ["torque"],
          `${nm(tool.torque)} N·m`,
          `releases at ${nm(tool.torque)} N·m`,
        ),
      ];
    case "drill":
      return [
        phrase("rings", ["bands"], tellTale(tool)),
        phrase("diameter", ["diameter"], `both are ${mm(tool.diameter)} mm`),
      ];
    default:
      return [];
  }
}

function instrumentPhrases(tool: Instrument): Phrase[] {
  const { noun, number } = nounAndNumber(tool);
  const read = tool.kind === "torque-limiter" ? "torque" : "mark";
  return [
    phrase(read, [read], spoken(tool), `${noun} ${number}`),
    phrase("mark", ["mark"], tool.mark, `etched "${tool.mark}"`),
    phrase("name", ["name"], tool.name),
    ...(tool.gtin ? [phrase("trade item", ["gtin"], `GTIN ${tool.gtin}`)] : []),
    phrase("length", ["length"], `${wholeMm(tool.length)} mm long`),
    ...sizePhrases(tool),
  ];
}

function platePhrases(plate: Plate): Phrase[] {
  const own = [
    phrase("name", ["name"], plate.name),
    phrase("mark", ["mark"], plate.mark, `etched "${plate.mark}"`),
  ];
  if ("mirror_of" in plate) return own;
  return [
    ...own,
    phrase(
      "thickness",
      ["thickness", "shaft"],
      `thickness ${mm(plate.thickness.shaft)} mm`,
      `plate ${mm(plate.thickness.shaft)}`,
      `${mm(plate.thickness.shaft)} mm thick`,
      `shaft ${mm(plate.thickness.shaft)} mm`,
    ),
    ...(plate.thickness.head === undefined
      ? []
      : [
          phrase(
            "thickness of the head",
            ["thickness", "head"],
            `head ${mm(plate.thickness.head)} mm`,
          ),
        ]),
    ...plate.variants.map(({ holes }, index) =>
      phrase(
        "holes in the row",
        ["variants", index, "holes"],
        `${holes} ${holes === 1 ? "hole" : "holes"}`,
      ),
    ),
    ...(plate.hooks ? [phrase("hooks", ["hooks", "count"], `${plate.hooks.count} hooks`)] : []),
  ];
}

/** Every text below a definition with the keys that lead to it: names, steps, reasons, marks, dates. */
function* texts(value: unknown, path: Fact["path"]): Generator<Phrase> {
  if (typeof value === "string") yield phrase(path.join(" "), path, value);
  else if (Array.isArray(value))
    for (const [index, one] of value.entries()) yield* texts(one, [...path, index]);
  else if (typeof value === "object" && value !== null)
    for (const [key, one] of Object.entries(value))
      if (key !== "source" && key !== "file" && key !== "id" && key !== "system")
        yield* texts(one, [...path, key]);
}

function systemPhrases(catalogue: Catalogue, id: string): Phrase[] {
  const system = catalogue.systems.get(id);
  if (system === undefined) return [];
  const { cards } = system;
  return [
    phrase("generation", ["generation"], `Generation ${system.generation}`),
    phrase("card issue", ["cards", "issue"], `issue ${cards.issue}`),
    phrase("review", ["cards", "review_by"], `review by ${cards.review_by}`),
    phrase("tray revision", ["tray_revision"], `tray revision ${system.tray_revision}`),
  ];
}

/** How the fields of one definition are said on paper, those that hold a number. */
export function phrasesOf(catalogue: Catalogue, { kind, id }: Fact): readonly Phrase[] {
  const of = <T>(map: ReadonlyMap<string, Defined<T>>, say: (one: Defined<T>) => Phrase[]) => {
    const one = map.get(id);
    return one === undefined ? [] : [...say(one), ...texts(one, [])];
  };
  const all: Readonly<Partial<Record<Fact["kind"], () => readonly Phrase[]>>> = {
    screw: () => of(catalogue.screws, screwPhrases),
    instrument: () => of(catalogue.instruments, instrumentPhrases),
    plate: () => of(catalogue.plates, platePhrases),
    zone: () => of(catalogue.zones, () => []),
    opening: () => of(catalogue.openings, () => []),
    recipe: () => of(catalogue.recipes, () => []),
    procedure: () => of(catalogue.procedures, () => []),
    "sign-off": () =>
      of(catalogue.signOffs, ({ role, date }) => [phrase("signature", [], `${role}, ${date}`)]),
    caution: () => of(catalogue.cautions, () => []),
    system: () => [...systemPhrases(catalogue, id), ...of(catalogue.systems, () => [])],
    publisher: () => {
      const { role, telephone } = catalogue.publisher.ask;
      return [
        phrase("telephone", ["ask", "telephone"], `${role}, ${telephone}`),
        ...texts(catalogue.publisher, []),
      ];
    },
    interfaces: () => [...texts(catalogue.interfaces, [])],
    document: () =>
      of(catalogue.documents, ({ title, issue, date }) => [
        phrase("source", [], `${title}, issue ${issue}, ${date}`),
      ]),
    tray: () =>
      of(catalogue.trays, ({ name, revision, mark, total, slots }) => [
        phrase("tray revision", ["revision"], `tray revision ${revision}`),
        phrase("tray mark", ["mark"], `Marked ${mark}`),
        phrase("total", ["total"], `Total ${total} pieces`),
        ...slots.map(({ slot }, index) =>
          phrase(`slot ${slot}`, ["slots", index, "slot"], `${name}, slot ${slot}`),
        ),
      ]),
    site: () =>
      of(catalogue.sites, ({ trays }) =>
        trays.map(({ tray, checked: { date } }, index) =>
          phrase(
            `check of ${tray}`,
            ["trays", index, "checked", "date"],
            `checked ${date}`,
            `when last checked, ${date}`,
          ),
        ),
      ),
    case: () =>
      of(catalogue.cases, ({ holes, expires, plan }) => [
        phrase("holes in the row", ["holes"], `${holes} holes`),
        phrase("expiry", ["expires"], `Expires ${expires}`, `Expired on ${expires}`),
        ...plan.flatMap(({ lengths, order }, index) => [
          phrase("order of work", ["plan", index, "order"], String(order)),
          ...(lengths
            ? [
                phrase(
                  "expected lengths",
                  ["plan", index, "lengths"],
                  `${wholeMm(lengths[0])}–${wholeMm(lengths[1])}`,
                ),
              ]
            : []),
        ]),
      ]),
  };
  const byField = grouped(all[kind]?.() ?? [], ({ path }) => path.join("."));
  return [...byField.values()]
    .map((same) => ({
      ...same[0],
      words: [...new Set(same.flatMap(({ words }) => words))].filter((words) => /\d/.test(words)),
    }))
    .filter(({ words }) => words.length > 0);
}
