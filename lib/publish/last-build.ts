import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { PrintRecord } from "../model/built.ts";
import { readManifest, sha256 } from "./manifest.ts";

/** What the last build left in `out` that may be taken over. */
export type LastBuild = {
  /** A file's bytes while they are as they were written. */
  readonly bytes: (file: string) => Uint8Array | undefined;
  /** What is remembered of a print, when it was made from the same. */
  readonly print: (file: string, from: string) => PrintRecord | undefined;
};

/** Opens the last build; bytes are proved by their SHA-256, so that nothing taken over need be read again. */
export function lastBuild(out: string): LastBuild {
  const manifest = readManifest(out);
  return {
    bytes: (file) => {
      const known = manifest?.files[file]?.sha256;
      const path = join(out, file);
      if (!known || !existsSync(path)) return undefined;
      const bytes = readFileSync(path);
      return sha256(bytes) === known ? bytes : undefined;
    },
    print: (file, from) => {
      const record = manifest?.prints[file];
      return record?.from === from ? record : undefined;
    },
  };
}
