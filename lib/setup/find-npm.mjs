import { existsSync, realpathSync } from "node:fs";
import { basename, delimiter, dirname, join } from "node:path";
import { SetupStop } from "./setup-stop.mjs";

/**
 * The JavaScript file of npm, to be run by Node itself: the npm that started us, else the one beside Node, else the one in PATH.
 * @param {Readonly<Record<string, string | undefined>>} env
 * @param {string} node the running Node
 * @returns {string}
 */
export function findNpm(env, node) {
  const started = env.npm_execpath ?? "";
  if (basename(started) === "npm-cli.js" && existsSync(started)) return started;
  const beside = join(dirname(node), "..", "lib", "node_modules", "npm", "bin", "npm-cli.js");
  if (existsSync(beside)) return beside;
  for (const folder of (env.PATH ?? "").split(delimiter)) {
    const candidate = join(folder, "npm");
    if (folder !== "" && existsSync(candidate)) {
      const real = realpathSync(candidate);
      if (basename(real) === "npm-cli.js") return real;
    }
  }
  throw new SetupStop("npm was not found beside Node. Install npm, or start with: npm start");
}
