import { opensPage } from "./opens-page.mjs";

/**
 * The flags with which a browser opens a page here; undefined when it opens none. It runs within its sandbox where it
 * can; as root, or where the system offers no sandbox, without: it only ever opens pages of our own, offline.
 * @param {string} executable
 * @param {Readonly<Record<string, string>>} env
 * @param {boolean} asRoot
 * @returns {Promise<string[] | undefined>}
 */
export async function launchFlags(executable, env, asRoot) {
  if (!asRoot && (await opensPage(executable, [], env))) return [];
  if (!(await opensPage(executable, ["--no-sandbox"], env))) return undefined;
  if (!asRoot) {
    process.stderr.write("This system offers the browser no sandbox; it runs without one.\n");
  }
  return ["--no-sandbox"];
}
