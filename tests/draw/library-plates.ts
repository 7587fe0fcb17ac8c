import { derive } from "../../lib/derive/derive.ts";
import { loadLibrary } from "../../lib/index.ts";
import type { LaidPlate } from "../../lib/model/laid-plate.ts";
import { referenceLibrary } from "../fixtures/reference-library.ts";

/** Every plate, side and length variant of the demo library and of the reference library. */
export function libraryPlates(): readonly LaidPlate[] {
  const { catalogue } = loadLibrary("content");
  return [...(catalogue ? derive(catalogue).plates : []), ...derive(referenceLibrary()).plates];
}
