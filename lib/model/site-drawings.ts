import type { Figure } from "./figure.ts";

/** Drawings that only the site's pages show. */
export type SiteDrawings = {
  /** By chain id: hole and screw in section. */
  readonly chains: ReadonlyMap<string, readonly Figure[]>;
  /** By screw id: a reading that its rack does not answer. */
  readonly screws: ReadonlyMap<string, readonly Figure[]>;
};
