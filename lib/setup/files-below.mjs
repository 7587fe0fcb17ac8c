import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";

/**
 * All files in a folder and in those within it, each folder's in the order of their names; none where there is no folder.
 * @param {string} folder
 * @returns {string[]}
 */
export function filesBelow(folder) {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true })
    .flatMap((entry) => {
      const path = join(folder, entry.name);
      return entry.isDirectory() ? filesBelow(path) : [path];
    })
    .sort((a, b) => (a < b ? -1 : 1));
}
