import type { Query } from "./recipe.ts";

/** Why one candidate of the asked kind fits or falls out; `because` holds every failed criterion with its numbers. */
export type Verdict = {
  readonly instrument: string;
  readonly fits: boolean;
  readonly because: readonly string[];
};

/** The part an instrument plays in a chain, in hand-over order. */
export type Role =
  | "gliding-guide"
  | "gliding-drill"
  | "insert"
  | "guide"
  | "sleeve"
  | "pilot-drill"
  | "gauge"
  | "countersink"
  | "tap"
  | "driver"
  | "limiter"
  | "handle";

/** One link of a chain: what was asked, what answered, and why every other candidate did not. */
export type Link = {
  readonly role: Role;
  readonly query: Query;
  /** Chosen instrument; absent for an optional tool the system lacks, and when the derivation failed. */
  readonly instrument?: string;
  /** Named end of a guide. */
  readonly end?: "centred" | "offset" | "free";
  /** False: a tool only used when the surgeon asks, or that this chain does without. */
  readonly required: boolean;
  readonly verdicts: readonly Verdict[];
};

/** Every instrument for one screw in one zone by one technique. */
export type Chain = {
  readonly id: string; // `${zone}--${screw}--${recipe}`
  readonly system: string;
  readonly zone: string;
  readonly screw: string;
  readonly recipe: string;
  readonly links: readonly Link[];
};

/** A required link with no candidate, or with two: named, never settled by order. */
export type ChainGap = {
  readonly chain: string;
  readonly system: string;
  readonly zone: string;
  readonly screw: string;
  readonly recipe: string;
  readonly role: Role;
  readonly fitting: readonly string[];
  readonly verdicts: readonly Verdict[];
};

/** A screw that goes through a zone it is not permitted in. */
export type ScrewTrap = {
  readonly zone: string;
  readonly zoneSystem: string;
  readonly screw: string;
  readonly screwSystem: string;
  /** lodges: the head stays in or on the hole; falls-through: the head passes too. */
  readonly head: "lodges" | "falls-through";
};

/** A drill that passes a bore made for another drill. */
export type DrillTrap = {
  readonly drill: string;
  readonly through: string;
  /** Drills that belong in this bore by some chain. */
  readonly belongs: readonly string[];
  /** Free play, micrometres. */
  readonly play: number;
};

/** What a rack answers to one gauge reading (micrometres). */
export type ReadingAnswer =
  | { readonly kind: "next"; readonly length: number; readonly over: number }
  | {
      readonly kind: "gap";
      readonly shorter: number;
      readonly longer: number;
      readonly short: number;
      readonly long: number;
    }
  | { readonly kind: "below"; readonly shortest: number }
  | { readonly kind: "above"; readonly longest: number };

/** The whole reading → next-length table of one screw, from the maker's policy; absent without one. */
export type LengthTable = {
  readonly screw: string;
  readonly gauge: string;
  readonly add: number;
  readonly readings: readonly { readonly reading: number; readonly answer: ReadingAnswer }[];
};

/** Two things in one system that are easily taken for one another, and what tells them apart. */
export type LookAlike = {
  readonly a: string;
  readonly b: string;
  readonly what:
    | "drill"
    | "sleeve"
    | "guide"
    | "driver"
    | "limiter"
    | "plate"
    | "screw"
    | "tap"
    | "insert";
  /** What is seen on a and what on b: "2 rings" and "3 rings"; absent where nothing tells them apart. */
  readonly tells?: readonly [ofA: string, ofB: string];
  /** Whether that is seen at once; otherwise rings are counted or marks read. */
  readonly atAGlance: boolean;
  /** How near the two lie in the trays. */
  readonly near: "adjacent" | "tray" | "room";
  /** How easily they are taken for one another and what follows, 0 to 100. */
  readonly score: number;
};

/** A number (micrometres) that is called for things of several kinds in one system. */
export type DoubleNumber = {
  readonly system: string;
  readonly number: number;
  readonly bearers: readonly {
    readonly id: string;
    readonly what: "screw" | "pilot drill" | "gliding drill";
  }[];
};

/** Everything derived from a catalogue. */
export type Derived = {
  readonly chains: readonly Chain[];
  readonly gaps: readonly ChainGap[];
  readonly screwTraps: readonly ScrewTrap[];
  readonly drillTraps: readonly DrillTrap[];
  readonly lengthTables: ReadonlyMap<string, LengthTable>;
  readonly lookAlikes: readonly LookAlike[];
  readonly doubleNumbers: readonly DoubleNumber[];
  /** Readings and rack lengths of each screw that sound alike in the publisher's language, micrometres. */
  readonly soundAlikes: ReadonlyMap<string, readonly (readonly [number, number])[]>;
  readonly plates: readonly import("./laid-plate.ts").LaidPlate[];
};
