import { existsSync, mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { findBrowser } from "./find-browser.mjs";
import { places } from "./places.mjs";

/** @typedef {import("./find-browser.mjs").Browser & { asked: string, stamp: string }} Remembered */

const asked = () =>
  JSON.stringify([
    process.env.PUPPETEER_EXECUTABLE_PATH ?? "",
    process.env.TRAYLEAF_SKIP_SYSTEM ?? "",
    process.getuid?.() === 0,
  ]);

/** @param {string} executable */
function stampOf(executable) {
  const found = statSync(executable, { throwIfNoEntry: false });
  return found ? `${found.size} ${found.mtimeMs}` : "";
}

/** @returns {Remembered | undefined} */
function recall() {
  if (!existsSync(places.browserRecord)) return undefined;
  try {
    const record = JSON.parse(readFileSync(places.browserRecord, "utf8"));
    const same = record.asked === asked() && record.stamp === stampOf(record.executable);
    return same && record.stamp !== "" ? record : undefined;
  } catch {
    return undefined;
  }
}

/**
 * The browser of the last run while it is still the same file and the same was asked for; else one is found and remembered.
 * @returns {Promise<import("./find-browser.mjs").Browser>}
 */
export async function rememberedBrowser() {
  const known = recall();
  if (known) return known;
  const browser = await findBrowser({ root: places.root, cache: places.cache, env: process.env });
  const record = { ...browser, asked: asked(), stamp: stampOf(browser.executable) };
  mkdirSync(dirname(places.browserRecord), { recursive: true });
  writeFileSync(`${places.browserRecord}.new`, `${JSON.stringify(record, null, 2)}\n`);
  renameSync(`${places.browserRecord}.new`, places.browserRecord);
  process.stderr.write(`Browser: ${browser.version} (${browser.executable})\n`);
  return browser;
}
