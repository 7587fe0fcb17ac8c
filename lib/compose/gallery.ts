import type { Figure } from "../model/figure.ts";
import { wholeMm } from "../model/measure.ts";
import { rackLengths } from "../model/rack-lengths.ts";
import type { SheetView, StepView } from "../model/sheet.ts";
import type { SiteDrawings } from "../model/site-drawings.ts";
import type { OpeningKind } from "../model/zone.ts";
import type { Composing } from "./composing.ts";
import { openingWords } from "./hole-symbols.ts";
import { instrumentNumbers, screwNumbers } from "./part-numbers.ts";

type Group = SiteDrawings["gallery"][number];
type Drawn = SiteDrawings["chains"];

const openings = Object.keys(openingWords) as readonly OpeningKind[];

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
    return [withFacts(figure, [...screwNumbers(screw), shown])];
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
      instrumentNumbers(instrument),
    ),
  );
}

/** The first frame of each verb, as the step cards show it. */
function frames(sheets: readonly SheetView[]): readonly Figure[] {
  const steps = sheets
    .filter((sheet): sheet is StepView => sheet.kind === "steps")
    .flatMap((sheet) => sheet.steps.map(({ verb, frame }) => ({ verb, frame, of: sheet.title })));
  const verbs = new Map(steps.toReversed().map((step) => [step.verb, step]));
  return [...verbs.values()].toReversed().map(({ verb, frame, of }) =>
    withFacts(frame, [
      ["step", verb],
      ["drawn for", of],
    ]),
  );
}

function maps(sheets: readonly SheetView[]): readonly Figure[] {
  const map = sheets.find(({ kind }) => kind === "plate-map");
  const tray = sheets.find(({ kind }) => kind === "tray");
  return [map, tray].flatMap((sheet) => (sheet !== undefined && "map" in sheet ? [sheet.map] : []));
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
    { id: "alike", title: "Look-alikes", figures: each(drawn.alike) },
    { id: "steps", title: "Steps", figures: frames(sheets) },
    { id: "maps", title: "A plate and a tray", figures: maps(sheets) },
    { id: "sides", title: "Plates from the side", figures: drawn.sides },
    { id: "bar", title: "Scale", figures: [composing.pictures.scaleBar("gallery-bar")] },
  ];
}
