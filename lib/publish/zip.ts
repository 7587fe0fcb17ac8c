import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Zippable, zipSync } from "fflate";
import { filesBelow } from "./manifest.ts";

const dayOfAllZips = new Date("2000-01-01T00:00:00");

/** Packs every file below `root` into `name` inside it, same bytes for the same files. */
export function zipFolder(root: string, name: string): void {
  const entries: Zippable = {};
  for (const file of filesBelow(root))
    entries[file] = [readFileSync(join(root, file)), { mtime: dayOfAllZips, level: 6 }];
  writeFileSync(join(root, name), zipSync(entries));
}
