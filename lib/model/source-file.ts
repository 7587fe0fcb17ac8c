import type { DefinitionKind } from "./definition.ts";
import type { Finding, LocatedFinding } from "./finding.ts";

/** One YAML file as read: safe plain data, with its kind, id and system told by where it lies. */
export type SourceFile = {
  /** Relative to the library, forward slashes. */
  readonly file: string;
  readonly kind: DefinitionKind;
  readonly id: string;
  readonly system: string;
  readonly data: unknown;
  /** True when reading refused the text: the id exists, its facts do not, so `data` is undefined. */
  readonly refused?: boolean;
};

/** Turns findings' paths into line, column and source frame. */
export type Locate = (finding: Finding) => LocatedFinding;
