import type { Box, Spot } from "./box.ts";
import type { Stretch } from "./stretch.ts";

/** A thing that wants its label: its box and the label's width in figure millimetres. A label may lie on the plate beside a
 * hole, but never where it would be read as one hole's name without being one. */
export type LabelWish = {
  readonly key: string;
  readonly target: Box;
  readonly width: number;
  readonly mayLieInside: boolean;
};

/** Where labels may stand: the free area, the plate's outline and the height of a line of text. */
export type LabelSpace = {
  readonly area: Box;
  readonly outline: readonly Spot[];
  readonly height: number;
};

/** One possible place of a label. `bar` is the short end of its leader, at the label. */
export type LabelCandidate = {
  readonly box: Box;
  readonly leader?: Stretch;
  readonly bar?: Stretch;
  readonly cost: number;
  /** The box around all of it and its clearance: two places whose extents do not overlap cannot clash. */
  readonly extent: Box;
};

/** The chosen place of one label. */
export type PlacedLabel = LabelCandidate & { readonly key: string };

/** Clear space between one label and all of another, millimetres. */
export const labelClear = 0.35;

/** Farthest edge of a label from the middle of its hole, millimetres. */
export const labelReach = 14;
