import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { asJavaScript } from "./as-javascript.mjs";
import { browserVariables } from "./browser-variables.mjs";
import { installPackages } from "./install-packages.mjs";
import { places } from "./places.mjs";
import { rememberedBrowser } from "./remembered-browser.mjs";
import { runChild } from "./run-child.mjs";
import { SetupStop } from "./setup-stop.mjs";

/**
 * Runs a measurement, tests/bench/<name>.ts, with the words that follow its name. Gives the exit code.
 * @param {readonly string[]} words as "print", "100"
 * @returns {Promise<number>}
 */
export async function bench([name = "", ...words]) {
  const folder = join(places.root, "tests", "bench");
  if (!/^[a-z-]+$/.test(name) || !existsSync(join(folder, `${name}.ts`))) {
    const known = readdirSync(folder).flatMap((file) => file.match(/^(.+)\.ts$/)?.[1] ?? []);
    throw new SetupStop(`Unknown bench "${name}". Known: ${known.join(", ")}.`, 2);
  }
  installPackages(places.root);
  const variables = browserVariables(await rememberedBrowser());
  return runChild([await asJavaScript(join(folder, `${name}.ts`)), ...words], variables);
}
