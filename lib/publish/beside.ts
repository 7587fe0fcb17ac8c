import { basename, dirname, join, resolve } from "node:path";

/** A hidden neighbour of the output folder, on the same file system: `.dist-<what>` beside `dist`. */
export function beside(out: string, what: string): string {
  const full = resolve(out);
  return join(dirname(full), `.${basename(full)}-${what}`);
}
