import type { PlateSide } from "../../model/figure.ts";
import type { RegionWish } from "./region-forms.ts";

/** What laying out a map needs to know of type, line and words: millimetres; `widths` by label. */
export type MapWords = {
  readonly height: number;
  readonly line: number;
  readonly ring: number;
  readonly widths: ReadonlyMap<string, number>;
  /** The names of the regions, none for a plate of one region. */
  readonly regions: readonly Pick<RegionWish, "region" | "words">[];
  /** Present where the plate is to be shown from the side too, and where it may be bent. */
  readonly side?: PlateSide | undefined;
  /** The largest scale the plate is drawn at. */
  readonly most: number;
  /** Whether leaders may cross stretches that may be bent. */
  readonly crossing: boolean;
};
