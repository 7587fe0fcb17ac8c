/** STOP: nothing is published. SIGN: published only when signed. NOTE: told, nothing more. */
export type Severity = "stop" | "sign" | "note";

/** A place in a definition: its file and the keys that lead there (numbers for list items). */
export type Place = {
  readonly file: string;
  readonly path: readonly (string | number)[];
  /** True when the key itself is meant (unknown key), not its value. */
  readonly key?: boolean;
  /** Set when reading already knows the position (1-based). */
  readonly line?: number;
  readonly column?: number;
};

/** Who signed a finding, why and when, and what they read ("Pebblefin instructions for use, issue C, 4.2"). */
export type Signature = {
  readonly file: string;
  readonly role: string;
  readonly reason: string;
  readonly date: string;
  readonly source: string;
};

/** Something wrong, said so that a stranger can mend it. */
export type Finding = {
  readonly rule: string;
  readonly severity: Severity;
  readonly message: string;
  readonly why: string;
  readonly fix: string;
  readonly place: Place;
  /** Present on a SIGN finding that a sign-off of the library names. */
  readonly signed?: Signature;
};

/** True for a finding with which nothing is published: a stop, or a SIGN that nobody has signed. */
export const refuses = ({ severity, signed }: Finding): boolean =>
  severity === "stop" || (severity === "sign" && signed === undefined);

/** A finding with its position and the source lines around it, ready to print. */
export type LocatedFinding = Finding & {
  readonly line: number;
  readonly column: number;
  readonly frame: readonly string[];
};
