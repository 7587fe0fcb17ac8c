import type { Figure } from "./figure.ts";
import type { CautionView, SheetFrame, WarningBox } from "./sheet-frame.ts";

/** A cell of a pairing row: an instrument or the words that say there is none. */
export type PairingCell = {
  readonly role: string;
  readonly noun: string;
  readonly number: string;
  readonly note: string;
  readonly figure?: Figure;
};

export type PairingView = SheetFrame & {
  readonly kind: "pairing";
  readonly columns: readonly string[];
  readonly rows: readonly {
    readonly chains: readonly string[];
    readonly called: string;
    readonly phrase: string;
    readonly hole: Figure;
    /** Symbols of the other kinds of hole that the same row serves. */
    readonly otherHoles?: readonly Figure[];
    readonly holeWords: string;
    readonly cells: readonly PairingCell[];
  }[];
  readonly traps: WarningBox;
  readonly lookAlikes: WarningBox;
  /** How traps and look-alikes share the width. */
  readonly share: "evenly" | "three-to-two" | "two-to-one";
};

export type LengthView = SheetFrame & {
  readonly kind: "lengths";
  readonly columns: readonly {
    readonly screw: string;
    readonly called: string;
    readonly policy: string;
    readonly entries: readonly {
      readonly reads: string;
      readonly next: string;
      readonly dead: boolean;
      readonly words: string;
    }[];
  }[];
  readonly deadNote: string;
};

export type PlateMapView = SheetFrame & {
  readonly kind: "plate-map";
  readonly sideWords: string;
  readonly map: Figure;
  readonly orientation: readonly string[];
  readonly legend: readonly { readonly symbol: Figure; readonly words: string }[];
  readonly bands: readonly {
    readonly region: string;
    readonly holes: string;
    readonly pairings: readonly {
      readonly zone: string;
      readonly called: string;
      readonly hand: string;
    }[];
  }[];
  readonly traps: WarningBox;
  /** The plate from the side, where its map has no room to show it. */
  readonly side?: Figure;
  /** The same facts as a table: one line a hole. */
  readonly table: readonly {
    readonly label: string;
    readonly kind: string;
    readonly takes: string;
  }[];
};

export type StepView = SheetFrame & {
  readonly kind: "steps";
  readonly subject: string;
  readonly steps: readonly {
    readonly number: string;
    readonly verb: string;
    readonly say: string;
    readonly inHand: string;
    /** What goes with it, less loud; empty where everything is called out. */
    readonly handedWith: string;
    readonly frame: Figure;
    readonly decides: string;
    /** When the surgeon has it left out; and when instructions or protocol do, in the size of notes. */
    readonly skip: string;
    readonly aside: string;
    readonly cautions: readonly CautionView[];
    readonly tally: readonly string[];
  }[];
};

export type TrayView = SheetFrame & {
  readonly kind: "tray";
  readonly trayMark: string;
  readonly map: Figure;
  readonly contents: readonly {
    readonly slot: string;
    readonly what: string;
    readonly mark: string;
    readonly quantity: string;
  }[];
  readonly total: string;
  readonly lookAlikes: WarningBox;
};

export type CaseView = SheetFrame & {
  readonly kind: "case";
  readonly code: string;
  readonly sideWords: string;
  readonly plateWords: string;
  readonly siteWords: string;
  readonly expires: string;
  readonly map: Figure;
  readonly rows: readonly {
    readonly order: string;
    readonly hole: string;
    readonly called: string;
    readonly technique: string;
    readonly hand: string;
    readonly lengths: string;
  }[];
  readonly pull: readonly {
    readonly what: string;
    /** How many the plan takes, of how many that lie there where that is known ("2 of 16"). */
    readonly pieces: string;
    readonly place: string;
    readonly status: "in tray" | "missing" | "not checked";
  }[];
  readonly missing: WarningBox;
};

/** A wall poster with one idea: what belongs to which screw, by family. */
export type PosterView = SheetFrame & {
  readonly kind: "poster";
  readonly families: readonly {
    readonly name: string;
    readonly rows: readonly {
      readonly chains: readonly string[];
      readonly called: string;
      readonly phrase: string;
      readonly holes: readonly Figure[];
      readonly holeWords: string;
      readonly cells: readonly {
        readonly noun: string;
        readonly number: string;
        readonly note: string;
      }[];
    }[];
  }[];
};

/** A card for the pocket: a row for each screw in words, and what goes in and is wrong. */
export type PocketView = SheetFrame & {
  readonly kind: "pocket";
  /** A small card has its rows on the front and the rest on the back. */
  readonly face: "whole" | "front" | "back";
  readonly rows: readonly {
    readonly chains: readonly string[];
    readonly called: string;
    readonly phrase: string;
    readonly hand: string;
  }[];
  readonly traps: WarningBox;
};

/** A sheet of stickers for the slots of a tray, the tray's own first. */
export type LabelsView = SheetFrame & {
  readonly kind: "labels";
  readonly labels: readonly {
    readonly slot: string;
    readonly what: string;
    readonly mark: string;
    readonly pieces: string;
    readonly tray: string;
    /** What to order it by ("GTIN 9520000000127"); empty where none is known. */
    readonly order: string;
  }[];
};

/** What to do when something does not go to plan, one row each. */
export type MishapView = SheetFrame & {
  readonly kind: "mishaps";
  readonly rows: readonly {
    readonly name: string;
    readonly acts: readonly string[];
    readonly decides: string;
    /** What is fetched and where it lies; empty where nothing is. */
    readonly fetched: string;
  }[];
};

export type SheetView =
  | PairingView
  | LengthView
  | PlateMapView
  | StepView
  | TrayView
  | CaseView
  | PosterView
  | PocketView
  | LabelsView
  | MishapView;
export type SheetKind = SheetView["kind"];
