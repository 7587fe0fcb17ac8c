import type { Catalogue } from "./model/catalogue.ts";
import type { Finding } from "./model/finding.ts";
import type { Locate } from "./model/source-file.ts";
import { Stop } from "./model/stop.ts";
import { readLibrary } from "./read/read-library.ts";
import { resolve } from "./resolve/resolve.ts";
import { validate } from "./validate/validate.ts";

/** A library as far as it could be read: the catalogue holds what holds together, the findings say what does not. */
export type Library = { readonly catalogue?: Catalogue; readonly locate: Locate; readonly findings: readonly Finding[] };

/** What the command line asks of a build. `today` is absent unless it was given. */
export type BuildOptions = {
  readonly library: string;
  readonly out: string;
  readonly today?: string;
  readonly format: "text" | "json";
  readonly pdf: boolean;
  readonly colour: boolean;
};

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

/** The newest card date of a library: the day that is printed and judged by when none is given. */
export function newestCardDay({ systems }: Catalogue): string {
  return [...systems.values()].map(({ cards }) => cards.date).reduce((newest, date) => (date > newest ? date : newest), "1970-01-01");
}

/** A library with all that reading and the rules say of it. */
export function checkLibrary(root: string, today?: string): Library {
  return loadLibrary(root);
}

/** Builds the site and its PDFs and returns the exit code. */
export async function buildLibrary(options: BuildOptions): Promise<number> {
  throw new Stop(3, `The build of "${options.library}" is not joined yet.`, "Use trayleaf check.");
}

/** Serves the site, rebuilding it when a file changes, and returns the exit code. */
export async function serveLibrary(options: BuildOptions): Promise<number> {
  throw new Stop(3, `The preview of "${options.library}" is not joined yet.`, "Use trayleaf check.");
}
