import { z } from "zod";

/** A paper format, millimetres. CSS knows no A6, so every size stands in numbers. */
export type Format = {
  readonly id: FormatId;
  readonly name: string;
  /** The paper's family: formats of one family are packed and imposed together. */
  readonly family: "a" | "letter" | "card";
  /** Size after cutting. */
  readonly width: number;
  readonly height: number;
  /** Clear edge inside the cut, also the safe area: nothing is printed there. 8 where a card is laminated. */
  readonly margin: number;
  /** How far paper is printed beyond the cut by a print shop. */
  readonly bleed: number;
  /** How far laminating film stands out beyond the cut, where it seals to itself; only where a card is laminated. */
  readonly film?: number;
  /** How far from the eye it is read, where the format and not the sheet decides. */
  readonly distance?: number;
};

const formatIds = [
  "a2-landscape",
  "a3-landscape",
  "a3-portrait",
  "a4-landscape",
  "a4-portrait",
  "a5-landscape",
  "a5-portrait",
  "a6-landscape",
  "a6-portrait",
  "letter-landscape",
  "letter-portrait",
  "half-letter-landscape",
  "half-letter-portrait",
  "id-1",
] as const;
export type FormatId = (typeof formatIds)[number];

type Paper = Omit<Format, "id" | "name" | "width" | "height">;
/** Film of pouches stands out by 2 to 5 mm: common practice. */
const hung: Paper = { family: "a", margin: 8, bleed: 3, film: 3 };
const poster: Paper = { family: "a", margin: 14, bleed: 3, distance: 2000 };
const hand: Paper = { family: "a", margin: 5, bleed: 3, distance: 350 };

function lying(id: FormatId, name: string, [width, height]: readonly [number, number], to: Paper) {
  return { id, name: `${name} landscape`, width, height, ...to };
}
function standing(
  id: FormatId,
  name: string,
  [width, height]: readonly [number, number],
  to: Paper,
) {
  return { id, name: `${name} portrait`, width, height, ...to };
}

/** Every format. Sizes after ISO 216, ISO/IEC 7810 and the US inch sizes. */
export const formats: Readonly<Record<FormatId, Format>> = {
  "a2-landscape": lying("a2-landscape", "A2", [594, 420], poster),
  "a3-landscape": lying("a3-landscape", "A3", [420, 297], { ...hung, distance: 1100 }),
  "a3-portrait": standing("a3-portrait", "A3", [297, 420], { ...hung, distance: 1100 }),
  "a4-landscape": lying("a4-landscape", "A4", [297, 210], hung),
  "a4-portrait": standing("a4-portrait", "A4", [210, 297], hung),
  "a5-landscape": lying("a5-landscape", "A5", [210, 148], hung),
  "a5-portrait": standing("a5-portrait", "A5", [148, 210], hung),
  "a6-landscape": lying("a6-landscape", "A6", [148, 105], hand),
  "a6-portrait": standing("a6-portrait", "A6", [105, 148], hand),
  "letter-landscape": lying("letter-landscape", "Letter", [279.4, 215.9], {
    ...hung,
    family: "letter",
  }),
  "letter-portrait": standing("letter-portrait", "Letter", [215.9, 279.4], {
    ...hung,
    family: "letter",
  }),
  "half-letter-landscape": lying("half-letter-landscape", "Half Letter", [215.9, 139.7], {
    ...hung,
    family: "letter",
  }),
  "half-letter-portrait": standing("half-letter-portrait", "Half Letter", [139.7, 215.9], {
    ...hung,
    family: "letter",
  }),
  "id-1": {
    id: "id-1",
    name: "ID-1 card",
    family: "card",
    width: 85.6,
    height: 53.98,
    margin: 3,
    bleed: 2,
    distance: 350,
  },
};

/** The formats that make sense for each kind of sheet, those it is made in when nobody asks otherwise first. */
export const formatsOfKind = {
  pairing: ["a4-landscape", "letter-landscape", "a3-landscape"],
  lengths: ["a4-portrait", "letter-portrait"],
  "plate-map": ["a5-landscape", "half-letter-landscape", "a4-landscape", "letter-landscape"],
  steps: ["a4-portrait", "letter-portrait", "a3-portrait"],
  tray: ["a4-landscape", "letter-landscape", "a3-landscape"],
  case: ["a4-landscape", "letter-landscape"],
  mishaps: ["a4-portrait", "letter-portrait"],
  poster: ["a2-landscape", "a3-landscape"],
  pocket: ["a6-landscape", "id-1", "half-letter-landscape", "a5-landscape"],
  labels: ["a4-portrait", "letter-portrait"],
} as const satisfies Record<string, readonly FormatId[]>;
export type FormatKind = keyof typeof formatsOfKind;

const choice = <const F extends readonly [FormatId, ...FormatId[]]>(ids: F) =>
  z.array(z.enum(ids)).max(ids.length).optional();

/** Which formats each kind of sheet is made in; a kind that is not named keeps what stands above it. */
export const FormatChoice = z
  .strictObject({
    pairing: choice(formatsOfKind.pairing),
    lengths: choice(formatsOfKind.lengths),
    "plate-map": choice(formatsOfKind["plate-map"]),
    steps: choice(formatsOfKind.steps),
    tray: choice(formatsOfKind.tray),
    case: choice(formatsOfKind.case),
    mishaps: choice(formatsOfKind.mishaps),
    poster: choice(formatsOfKind.poster),
    pocket: choice(formatsOfKind.pocket),
    labels: choice(formatsOfKind.labels),
  })
  .describe("The paper formats each kind of sheet is made in");
export type FormatChoice = z.output<typeof FormatChoice>;
