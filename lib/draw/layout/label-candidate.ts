import type { Box, Spot } from "./box.ts";
import type { OutlineRails, RailSide } from "./outline-rails.ts";
import type { Stretch } from "./stretch.ts";

/** A thing that wants its label: where it is, its box and the label's width in figure millimetres. A hole's label may lie on the plate beside
 * it, another's may not, lest it be read as a hole's name; no leader meets another's hole. Labels of one `row` look best on one
 * side. */
export type LabelWish = {
  readonly key: string;
  readonly at: Spot;
  readonly target: Box;
  readonly width: number;
  readonly isHole: boolean;
  readonly row?: string;
};

/** Where labels may stand: the free area, the plate's outline, how far the plate goes with its hooks, boxes that no label meets, whether
 * leaders may cross them, and the height of a line of text. */
export type LabelSpace = {
  readonly area: Box;
  readonly outline: readonly Spot[];
  readonly rails: OutlineRails;
  readonly blocks: readonly Box[];
  readonly crossing: boolean;
  readonly height: number;
};

/** One possible place of a label: on the plate beside its hole, or in a line (0 nearest) on a side of the plate. */
export type LabelCandidate = {
  readonly box: Box;
  readonly side: RailSide | "beside";
  readonly line: number;
  readonly leader?: Stretch;
  readonly cost: number;
  /** The box around all of it and its clearance: two places whose extents do not overlap cannot clash. */
  readonly extent: Box;
};

/** How closely places are looked for: only the likely ones, or all that there may be. */
export type Search = "likely" | "all";

/** The chosen place of one label. */
export type PlacedLabel = Omit<LabelCandidate, "extent"> & { readonly key: string };

/** Clear space between one label and all of another, millimetres. */
export const labelClear = 0.35;

/** Farthest edge of a label from its hole, millimetres. */
export const labelReach = 14.1;
