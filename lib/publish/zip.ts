import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Zippable, zipSync } from "fflate";
import { filesBelow } from "./manifest.ts";

const packed = /\.(pdf|png|woff2)$/;
const dayOfAllZips = new Date("2000-01-01T00:00:00");

/** Packs every file below `root` into `name` inside it, same bytes for the same files; what is packed already is stored as it is. */
export function zipFolder(root: string, name: string): void {
  const entries: Zippable = {};
  for (const file of filesBelow(root))
    entries[file] = [
      readFileSync(join(root, file)),
      { mtime: dayOfAllZips, level: packed.test(file) ? 0 : 6 },
    ];
  writeFileSync(join(root, name), zipSync(entries));
}
