import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

// A program of its own, so that a download that hangs can be ended. Prints a dot as bytes arrive, at last the executable's path.
const fromPuppeteer = createRequire(createRequire(import.meta.url).resolve("puppeteer"));
const load = (/** @type {string} */ name) =>
  import(pathToFileURL(fromPuppeteer.resolve(name)).href);
const { install } = await load("@puppeteer/browsers");
const { PUPPETEER_REVISIONS } = await load("puppeteer-core/internal/revisions.js");

const installed = await install({
  browser: "chrome-headless-shell",
  buildId: PUPPETEER_REVISIONS["chrome-headless-shell"],
  cacheDir: process.argv[2] ?? "",
  downloadProgressCallback: () => process.stdout.write("."),
});
process.stdout.write(`\n${installed.executablePath}\n`);
