import { dirname, join } from "node:path";
import { asJavaScript } from "./as-javascript.mjs";
import { browserVariables } from "./browser-variables.mjs";
import { installPackages } from "./install-packages.mjs";
import { places } from "./places.mjs";
import { rememberedBrowser } from "./remembered-browser.mjs";
import { runChild } from "./run-child.mjs";
import { unchanged } from "./unchanged.mjs";

/** @param {readonly string[]} words */
function needsBrowser(words) {
  const asksOnly = words.includes("--help") || words.includes("-h") || words.includes("--no-pdf");
  return !asksOnly && (words[0] === "build" || words[0] === "serve");
}

/**
 * Installs what a command needs and runs it; a build whose inputs and output are as they were ends at once. Gives the exit code.
 * @param {readonly string[]} words as "build", "--out", "public"
 * @returns {Promise<number>}
 */
export async function commandLine(words) {
  installPackages(places.root);
  const variables = needsBrowser(words) ? browserVariables(await rememberedBrowser()) : {};
  if (words[0] === "build") {
    const summary = unchanged({ root: places.root, argv: words.slice(1) });
    if (summary) {
      process.stdout.write(`${[...summary, "Nothing changed."].join("\n")}\n`);
      return 0;
    }
  }
  const program = await asJavaScript(places.commandLine);
  // Beside the code that draws them: other code draws other figures.
  const figures = join(dirname(program), "figures.json");
  return runChild(["--disable-proto=delete", program, ...words], {
    ...variables,
    TRAYLEAF_FIGURES: figures,
  });
}
