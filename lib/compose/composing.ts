import type { Catalogue } from "../model/catalogue.ts";
import type { Derived } from "../model/chain.ts";
import type { Pictures } from "../model/figure.ts";

/** All that composing works from: the facts, what was derived from them, and the drawings it may ask for. */
export type Composing = {
  readonly catalogue: Catalogue;
  readonly derived: Derived;
  readonly pictures: Pictures;
  /** The day of the build, ISO 8601. */
  readonly today: string;
};
