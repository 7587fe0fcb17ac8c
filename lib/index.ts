import type { Catalogue } from "./model/catalogue.ts";
import type { Finding } from "./model/finding.ts";
import type { Locate } from "./model/source-file.ts";
import { readLibrary } from "./read/read-library.ts";
import { resolve } from "./resolve/resolve.ts";
import { validate } from "./validate/validate.ts";

/** A library as far as it could be read: the catalogue holds what holds together, the findings say what does not. */
export type Library = { readonly catalogue?: Catalogue; readonly locate: Locate; readonly findings: readonly Finding[] };

/** Reads, validates and resolves a library folder. */
export function loadLibrary(root: string): Library {
  const read = readLibrary(root);
  const valid = validate(read.sources);
  const resolved = resolve(valid.definitions);
  return {
    ...(resolved.catalogue ? { catalogue: resolved.catalogue } : {}),
    locate: read.locate,
    findings: [...read.findings, ...valid.findings, ...resolved.findings],
  };
}
