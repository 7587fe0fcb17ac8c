import type { Figure } from "../model/figure.ts";
import { mm, wholeMm } from "../model/measure.ts";
import { rackLengths } from "../model/rack-lengths.ts";
import { Verb } from "../model/recipe.ts";
import type { SheetView, StepView } from "../model/sheet.ts";
import { signNames } from "../model/signs.ts";
import type { SiteDrawings } from "../model/site-drawings.ts";
import type { OpeningKind } from "../model/zone.ts";
import type { Composing } from "./composing.ts";
import { openingWords } from "./hole-symbols.ts";
import { instrumentNumbers, screwNumbers } from "./part-numbers.ts";
import { partsAtVerb } from "./step-parts.ts";
import { verbWords } from "./verb-words.ts";

type Group = SiteDrawings["gallery"][number];
type Drawn = SiteDrawings["chains"];

const openings = Object.keys(openingWords) as readonly OpeningKind[];

/** Millimetres: a working end, an outline, a frame. */
const [endWidth, outlineWidth] = [24, 120];
const frame = { width: 42, height: 22 } as const;

const withFacts = (figure: Figure, facts: NonNullable<Figure["facts"]>): Figure => ({
  ...figure,
  facts,
});

function holes({ pictures }: Composing): readonly Figure[] {
  const symbols = openings.map((kind) => pictures.hole(`gallery-hole-${kind}`, kind));
  const uses = (["threaded", "plain"] as const).map((use) =>
    pictures.hole(`gallery-hole-use-${use}`, "combined", use),
  );
  return [...symbols, ...uses].map((figure) => withFacts(figure, [["symbol", figure.title]]));
}

function screws({ catalogue, pictures }: Composing): readonly Figure[] {
  return [...catalogue.screws.values()].flatMap((screw) => {
    const lengths = rackLengths(screw);
    const length = lengths[screw.example_length_index ?? 0] ?? lengths[0];
    if (length === undefined) return [];
    const figure = pictures.screw(`gallery-screw-${screw.id}`, screw, catalogue.interfaces, length);
    const shown = [
      "length drawn",
      `${wholeMm(length)} mm, an example length from the rack`,
    ] as const;
    return [withFacts(figure, [...screwNumbers(screw, catalogue.interfaces), shown])];
  });
}

function instruments({ catalogue, pictures }: Composing): readonly Figure[] {
  return [...catalogue.instruments.values()].map((instrument) =>
    withFacts(
      pictures.wholeInstrument(
        `gallery-tool-${instrument.id}`,
        instrument,
        catalogue.interfaces,
        150,
      ),
      instrumentNumbers(instrument, catalogue.interfaces),
    ),
  );
}

/** The working end of each instrument as pairing sheets show it, a guide's by each of its ends. */
function workingEnds({ catalogue, pictures }: Composing): readonly Figure[] {
  const { interfaces } = catalogue;
  return [...catalogue.instruments.values()].flatMap((instrument) => {
    const ends =
      instrument.kind === "plain-guide" ? instrument.ends.map(({ name }) => name) : [undefined];
    return ends.map((end, index) => {
      const id = `gallery-end-${instrument.id}-${index + 1}`;
      const figure = pictures.workingEnd(id, instrument, interfaces, endWidth, end);
      const facts = end === undefined ? [] : [["end", end] as const];
      return withFacts(figure, [...facts, ...instrumentNumbers(instrument, interfaces)]);
    });
  });
}

/** The outline of each plate in its longest variant, as lists show it. */
function outlines({ catalogue, derived, pictures }: Composing): readonly Figure[] {
  return [...catalogue.plates.values()].flatMap(({ id }) => {
    const laid = derived.plates
      .filter(({ plate }) => plate === id)
      .toSorted((a, b) => a.holesInRow - b.holesInRow)
      .at(-1);
    if (laid === undefined) return [];
    const figure = pictures.plateOutline(`gallery-outline-${id}`, laid, outlineWidth);
    return [
      withFacts(figure, [
        ["holes in a row", String(laid.holesInRow)],
        ["length", `${mm(laid.length)} mm`],
      ]),
    ];
  });
}

/** A frame for each verb that no card shows, from the first chain's parts. */
function otherFrames(composing: Composing, shown: ReadonlySet<string>): readonly Figure[] {
  const { catalogue, derived, pictures } = composing;
  const [chain] = derived.chains;
  if (chain === undefined) return [];
  const countersink = [...catalogue.instruments.values()].find(
    ({ kind }) => kind === "countersink",
  );
  return Verb.options
    .filter((verb) => !shown.has(verbWords[verb]))
    .map((verb) => {
      const parts = { ...partsAtVerb(composing, chain, verb), countersink };
      const figure = pictures.step(
        `gallery-step-${verb}`,
        verb,
        parts,
        catalogue.interfaces,
        frame,
      );
      return withFacts(figure, [["step", verbWords[verb]]]);
    });
}

/** The first frame of each verb, as the step cards show it. */
function frames(composing: Composing, sheets: readonly SheetView[]): readonly Figure[] {
  const steps = sheets
    .filter((sheet): sheet is StepView => sheet.kind === "steps")
    .flatMap((sheet) => sheet.steps.map(({ verb, frame }) => ({ verb, frame, of: sheet.title })));
  const verbs = new Map(steps.toReversed().map((step) => [step.verb, step]));
  const printed = [...verbs.values()].toReversed().map(({ verb, frame, of }) =>
    withFacts(frame, [
      ["step", verb],
      ["drawn for", of],
    ]),
  );
  return [...printed, ...otherFrames(composing, new Set(verbs.keys()))];
}

/** The first plate map, and the first tray's map with what lies in each slot. */
function maps(sheets: readonly SheetView[]): readonly Figure[] {
  const plate = sheets.find((sheet) => sheet.kind === "plate-map");
  const tray = sheets.find((sheet) => sheet.kind === "tray");
  const slots = (tray?.contents ?? []).map(
    ({ slot, what, quantity }) => [slot, `${what}, ${quantity}`] as const,
  );
  return [...(plate ? [plate.map] : []), ...(tray ? [withFacts(tray.map, slots)] : [])];
}

/** The bend zone's mark and every other mark and pattern, each with what it says. */
function signs({ pictures }: Composing): readonly Figure[] {
  const bend = pictures.bendMark("gallery-sign-bend");
  return [
    ...signNames.map((name, index) => pictures.sign(`gallery-sign-${index + 1}`, name)),
    withFacts(bend, [["says", "may be bent here"]]),
  ];
}

function barAndCode({ pictures }: Composing): readonly Figure[] {
  return [
    withFacts(pictures.scaleBar("gallery-bar"), [["measures", "50 mm in print"]]),
    withFacts(pictures.cardCode("gallery-code", "CARD A 00000000"), [
      ["holds", "card, issue and fingerprint"],
    ]),
  ];
}

/** Every drawn part and figure in groups, each figure with the numbers it is drawn from. */
export function gallery(
  composing: Composing,
  sheets: readonly SheetView[],
  drawn: {
    readonly cuts: Drawn;
    readonly dead: Drawn;
    readonly sides: readonly Figure[];
    readonly alike: Drawn;
    readonly tables: Drawn;
  },
): readonly Group[] {
  const each = (from: Drawn): readonly Figure[] => [
    ...new Map([...from.values()].flat().map((figure) => [figure.title, figure])).values(),
  ];
  return [
    { id: "holes", title: "Holes", figures: holes(composing) },
    { id: "screws", title: "Screws, at true size", figures: screws(composing) },
    { id: "cuts", title: "Hole and screw in section", figures: each(drawn.cuts) },
    { id: "dead", title: "Readings without a length", figures: each(drawn.dead) },
    { id: "instruments", title: "Instruments", figures: instruments(composing) },
    { id: "ends", title: "Working ends, at true size", figures: workingEnds(composing) },
    { id: "alike", title: "Look-alikes", figures: each(drawn.alike) },
    { id: "steps", title: "Steps", figures: frames(composing, sheets) },
    { id: "maps", title: "A plate and a tray", figures: maps(sheets) },
    { id: "sides", title: "Plates from the side", figures: drawn.sides },
    { id: "outlines", title: "Plates' outlines", figures: outlines(composing) },
    { id: "tables", title: "Back tables", figures: each(drawn.tables) },
    { id: "signs", title: "Marks and patterns", figures: signs(composing) },
    { id: "bar", title: "Scale and code", figures: barAndCode(composing) },
  ];
}
