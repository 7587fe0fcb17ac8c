import type { OpeningKind } from "../../model/zone.ts";
import type { Pen } from "../canvas.ts";

/** Sizes of one zone of a hole, mm: the narrowest width a screw passes, the seat around it, the length of a slot. */
export type ZoneSizes = {
  readonly through: number;
  readonly seat?: number;
  readonly slot?: number;
};

/** Sizes of a hole, mm. A combined opening has a plain zone beside the threaded one, their centres `apart`. */
export type HoleSizes = ZoneSizes & { readonly beside?: ZoneSizes & { readonly apart: number } };

/** How one kind of hole is drawn, on maps, in rows and in legends alike. The origin is its middle, slots lie along x, and a combined opening has its threaded part to the left. */
export type HolePart = {
  readonly id: OpeningKind;
  /** The word that always stands beside it. */
  readonly label: string;
  draw(pen: Pen, sizes: HoleSizes): void;
  /** Sizes of the symbol in rows and legends. */
  readonly samples: readonly HoleSizes[];
};
