import type { Catalogue } from "../../lib/model/catalogue.ts";
import { catalogueOf, type Edit } from "../fixtures/catalogue-of.ts";
import { referenceLibrary } from "./reference-library.ts";

/** The small reference library with an example's edits, as a catalogue. Throws where an edit breaks a schema. */
export const editedLibrary = (edits: readonly Edit[]): Catalogue =>
  catalogueOf(referenceLibrary, "pebblefin", edits);
