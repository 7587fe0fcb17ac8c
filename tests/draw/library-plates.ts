import { derive } from "../../lib/derive/derive.ts";
import type { LaidPlate } from "../../lib/model/laid-plate.ts";
import { demo } from "../fixtures/demo-library.ts";
import { referenceLibrary } from "../fixtures/reference-library.ts";

/** Every plate, side and length variant of the demo library and of the reference library. */
export const libraryPlates: readonly LaidPlate[] = [
  ...demo.derived.plates,
  ...derive(referenceLibrary()).plates,
];
