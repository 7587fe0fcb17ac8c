import type { Figure } from "./figure.ts";
import type { Vision } from "./vision.ts";

/** Drawings that only the site's pages show. */
export type SiteDrawings = {
  /** By chain id: hole and screw in section. */
  readonly chains: ReadonlyMap<string, readonly Figure[]>;
  /** By screw id: a reading that its rack does not answer. */
  readonly screws: ReadonlyMap<string, readonly Figure[]>;
  /** By plate id: the plate from the side in its longest variant. */
  readonly plates: ReadonlyMap<string, Figure>;
  /** By instrument id: it beside each instrument that it is taken for. */
  readonly alike: ReadonlyMap<string, readonly Figure[]>;
  /** By procedure id: its back table from either side. */
  readonly tables: ReadonlyMap<string, readonly Figure[]>;
  /** Symbols that stand together on sheets, once for each way of seeing. */
  readonly proof: ReadonlyMap<Vision["id"], readonly Figure[]>;
  /** Every drawn part and figure with its numbers, in groups. */
  readonly gallery: readonly {
    readonly id: string;
    readonly title: string;
    readonly figures: readonly Figure[];
  }[];
};
