import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";

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

/**
 * Takes files into a hash: each with its path from a folder, its length and its bytes.
 * @param {import("node:crypto").Hash} hash
 * @param {string} root
 * @param {readonly string[]} files
 */
export function hashFiles(hash, root, files) {
  for (const file of files) {
    const bytes = readFileSync(file);
    hash.update(`\n${relative(root, file).split(sep).join("/")} ${bytes.length}\n`).update(bytes);
  }
}
