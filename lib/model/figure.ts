import type { BoneDepth, Drilled } from "./bone-depth.ts";
import type { Defined } from "./definition.ts";
import type { Instrument } from "./instrument.ts";
import type { Interfaces } from "./interfaces.ts";
import type { LaidPlate } from "./laid-plate.ts";
import type { Verb } from "./recipe.ts";
import type { Screw } from "./screw.ts";
import type { SignName } from "./signs.ts";
import type { Tray } from "./tray.ts";
import type { OpeningKind, Zone } from "./zone.ts";

/** A finished picture: SVG text sized in mm with its own <title> and <desc>, ids prefixed by `id`. */
export type Figure = {
  readonly id: string;
  readonly svg: string;
  readonly title: string;
  readonly description: string;
  /** Millimetres on paper. */
  readonly width: number;
  readonly height: number;
  /** The figure's numbers as a table, where it shows any: what is measured, and its size in words. */
  readonly facts?: readonly (readonly [what: string, size: string])[];
  /** Paper millimetres per millimetre, where all of it is drawn at one scale that follows from the paper. */
  readonly scale?: number;
  /** Whether a plate's map shows the plate from the side too. */
  readonly fromSide?: boolean;
};

/** What a step's drawing is built from: the chain's own parts, each optional. */
export type StepParts = {
  readonly drill?: Defined<Instrument>;
  readonly guide?: Defined<Instrument>;
  readonly guideEnd?: "centred" | "offset" | "free";
  readonly sleeve?: Defined<Instrument>;
  readonly insert?: Defined<Instrument>;
  readonly gauge?: Defined<Instrument>;
  readonly tap?: Defined<Instrument>;
  readonly countersink?: Defined<Instrument>;
  readonly driver?: Defined<Instrument>;
  readonly limiter?: Defined<Instrument>;
  readonly handle?: Defined<Instrument>;
  readonly screw?: Defined<Screw>;
  readonly zone?: Defined<Zone>;
  /** Micrometres. */
  readonly plateThickness?: number;
  /** What is cut into the bone by the end of the step; nothing where absent. */
  readonly drilled?: Drilled;
  /** What the step takes out. */
  readonly takenOut?: Defined<Instrument>;
  readonly hooks?: { readonly count: number; readonly depth: number; readonly spread: number };
};

/** What a cut view shows: the screw seated, the two holes of a lag screw, or the lag screw seated in them. */
export type SectionView = "seated" | "lag-holes" | "lag-seated";

/** What a cut through a hole is drawn from. */
export type SectionParts = {
  readonly screw: Defined<Screw>;
  readonly zone: Defined<Zone>;
  readonly plateName: string;
  /** Micrometres. */
  readonly plateThickness: number;
  /** How far the pilot hole goes; through both sides where absent. */
  readonly depth?: BoneDepth;
  /** Micrometres; without it the screw's example length. */
  readonly length?: number;
};

/** A reading that no screw of the rack answers, micrometres; `add` is what the policy adds to a reading. */
export type DeadReading = {
  readonly reading: number;
  readonly add: number;
  readonly shorter: number;
  readonly longer: number;
};

/** Paper for a cut view, mm; `letter` is the font size of its words. */
export type SectionSize = {
  readonly width: number;
  readonly height: number;
  readonly letter?: number;
};

/** What a plate shows from the side that its outline does not: how thick it is (micrometres), and between which holes it may be bent. */
export type PlateSide = {
  readonly thickness: { readonly head?: number | undefined; readonly shaft: number };
  readonly bends: readonly (readonly [string, string])[];
};

/** What a plate map shows besides the plate: holes to emphasise in their order (a case's plan), where it may be bent and, where there is
 * room, the plate from the side; `most` is the largest scale it is drawn at (paper mm per mm of plate). */
export type MapShown = {
  readonly marked?: readonly string[];
  readonly side?: PlateSide;
  readonly most?: number;
};

/** What lies on a back table in order of use: groups under the screw that is called; items of one `step` are asked for together; `alike` tells an item from its
 * look-alikes on the same table, whose ids are `alikeWith`. */
export type BackTable = {
  readonly name: string;
  readonly groups: readonly {
    readonly called: string;
    readonly items: readonly {
      readonly instrument: Defined<Instrument>;
      readonly words: readonly [noun: string, number: string];
      readonly step: number;
      readonly alike: string;
      readonly alikeWith: readonly string[];
    }[];
  }[];
};

/** A slot of a tray map with what lies in it, already worded. */
export type TrayMapSlot = {
  readonly slot: string;
  readonly words: string;
  readonly mark: string;
  readonly quantity: string;
  readonly instrument?: Defined<Instrument>;
  readonly screw?: Defined<Screw>;
  readonly plate?: LaidPlate;
  /** For a rack: length word and pieces, in order. */
  readonly rack?: readonly { readonly length: string; readonly quantity: string }[];
  /** What it is most easily taken for, and what is seen there. */
  readonly looksLike?: { readonly name: string; readonly seen: string };
};

/** The drawings that composing may ask for; handed in, so that composing knows no SVG. Sizes in mm. */
export type Pictures = {
  /** Width in mm of one line of words in the shipped typeface at `size` mm of font size; throws on a character that it lacks. */
  textWidth(text: string, size: number, weight?: 400 | 600 | 700): number;
  /** The hole symbol used on maps, rows and legends alike. `use` blackens nothing: it points at one part of a combined opening. */
  hole(id: string, kind: OpeningKind, use?: "threaded" | "plain"): Figure;
  /** The mark of a bend zone, as on maps. */
  bendMark(id: string): Figure;
  /** The working end at true size, its body broken off; at most `width` long. */
  workingEnd(
    id: string,
    instrument: Defined<Instrument>,
    interfaces: Interfaces,
    width: number,
    end?: string,
  ): Figure;
  /** The whole instrument, to scale to fit `width`. */
  wholeInstrument(
    id: string,
    instrument: Defined<Instrument>,
    interfaces: Interfaces,
    width: number,
  ): Figure;
  /** A screw's side view at true size. `length` in micrometres. */
  screw(id: string, screw: Defined<Screw>, interfaces: Interfaces, length: number): Figure;
  /** A cut through hole and screw from the real numbers, at one scale. */
  section(
    id: string,
    view: SectionView,
    parts: SectionParts,
    interfaces: Interfaces,
    size: SectionSize,
  ): Figure;
  /** A reading between two lengths: the shorter screw and the longer one in the same hole. */
  deadReading(
    id: string,
    reading: DeadReading,
    parts: SectionParts,
    interfaces: Interfaces,
    size: SectionSize,
  ): Figure;
  /** The plate, as large as `width` × `height` allows, in true proportion, with labels. */
  plateMap(
    id: string,
    plate: LaidPlate,
    size: { readonly width: number; readonly height: number },
    shown?: MapShown,
  ): Figure;
  /** The plate from the side, in true proportion. */
  plateSide(id: string, plate: LaidPlate, side: PlateSide, width: number): Figure;
  /** Two look-alikes at true size, the telling feature enlarged. */
  alikePair(
    id: string,
    pair: readonly [Defined<Instrument>, Defined<Instrument>],
    interfaces: Interfaces,
    width: number,
  ): Figure;
  /** A back table laid out in order of use, seen from one side of it. */
  backTable(
    id: string,
    table: BackTable,
    interfaces: Interfaces,
    view: { readonly width: number; readonly side: "scrub side" | "opposite side" },
  ): Figure;
  /** A plate's outline alone, at most `width` long. */
  plateOutline(id: string, plate: LaidPlate, width: number): Figure;
  /** One frame of a storyboard. */
  step(
    id: string,
    verb: Verb,
    parts: StepParts,
    interfaces: Interfaces,
    size: { readonly width: number; readonly height: number },
  ): Figure;
  trayMap(
    id: string,
    tray: Defined<Tray>,
    slots: readonly TrayMapSlot[],
    interfaces: Interfaces,
    size: { readonly width: number; readonly height: number },
    type: { readonly called: number; readonly body: number; readonly note: number },
  ): Figure;
  /** One of the marks and patterns that drawings are made of. */
  sign(id: string, name: SignName): Figure;
  /** A bar that measures exactly 50 mm. */
  scaleBar(id: string): Figure;
  /** A square code to be read by a telephone or a scanner. */
  cardCode(id: string, text: string): Figure;
};
