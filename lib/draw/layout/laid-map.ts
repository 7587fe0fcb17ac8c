import type { Box } from "./box.ts";
import type { FittedPlate } from "./fit-plate.ts";
import type { PlacedLabel } from "./label-candidate.ts";
import type { OutlineRails } from "./outline-rails.ts";
import type { RegionMark } from "./region-forms.ts";

/** A plate's map as numbers, figure millimetres: the fitted plate, each hole's box, the hooks' box, a place for every label that has one,
 * the marks that name its regions, the stretches that may be bent between the plate's edges, and where its view from the side lies. */
export type LaidMap = {
  readonly fitted: FittedPlate;
  readonly boxes: ReadonlyMap<string, Box>;
  readonly hooks?: Box;
  readonly labels: readonly PlacedLabel[];
  /** Keys of labels that have no place. */
  readonly lost: readonly string[];
  readonly regions: readonly RegionMark[];
  readonly bends: readonly { readonly name: string; readonly box: Box }[];
  readonly edges: OutlineRails;
  readonly side?: { readonly base: number; readonly words: number };
};
