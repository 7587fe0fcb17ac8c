import { existsSync } from "node:fs";
import { browserVersion } from "./browser-version.mjs";
import { downloadedBrowser } from "./downloaded-browser.mjs";
import { fontSettings } from "./font-settings.mjs";
import { launchFlags } from "./launch-flags.mjs";
import { packagedBrowser } from "./packaged-browser.mjs";
import { SetupStop } from "./setup-stop.mjs";
import { systemBrowsers } from "./system-browsers.mjs";

/**
 * A browser that opens pages here: its path, what it answers to --version, the flags and variables that it needs.
 * @typedef {{ executable: string, version: string, flags: string[], env: Record<string, string> }} Browser
 */

/** @typedef {{ root: string, cache: string, env: Readonly<Record<string, string | undefined>>, fixed?: readonly string[] }} Where */

/**
 * @param {string} executable
 * @param {Record<string, string>} own
 * @param {Where} where
 * @returns {Promise<Browser | undefined>}
 */
async function tried(executable, own, { root, cache }) {
  const env = { ...own, ...fontSettings({ root, cache }) };
  const version = browserVersion(executable, env);
  const flags = version && (await launchFlags(executable, env, process.getuid?.() === 0));
  if (version && flags) return { executable, version, flags, env };
  process.stderr.write(`Passed over ${executable}: it does not open a page.\n`);
  return undefined;
}

/**
 * Finds a browser, or gets one: the one named by PUPPETEER_EXECUTABLE_PATH and no other; else one of the system; else a
 * downloaded one; else one from a package. TRAYLEAF_SKIP_SYSTEM=1 and TRAYLEAF_SKIP_DOWNLOAD=1 leave a step out.
 * Throws a SetupStop when none is to be had.
 * @param {Where} where
 * @returns {Promise<Browser>}
 */
export async function findBrowser(where) {
  const { cache, env, fixed } = where;
  const named = env.PUPPETEER_EXECUTABLE_PATH;
  if (named) {
    const browser = existsSync(named) ? await tried(named, {}, where) : undefined;
    if (browser) return browser;
    throw new SetupStop(
      `PUPPETEER_EXECUTABLE_PATH names ${named}, which is no browser that runs here. Correct it, or unset it.`,
    );
  }
  if (env.TRAYLEAF_SKIP_SYSTEM !== "1") {
    for (const candidate of systemBrowsers({ path: env.PATH ?? "", ...(fixed ? { fixed } : {}) })) {
      const browser = existsSync(candidate) ? await tried(candidate, {}, where) : undefined;
      if (browser) return browser;
    }
  }
  if (env.TRAYLEAF_SKIP_DOWNLOAD !== "1") {
    const downloaded = await downloadedBrowser(cache);
    const browser = downloaded ? await tried(downloaded, {}, where) : undefined;
    if (browser) return browser;
  }
  const packaged = env.TRAYLEAF_SKIP_PACKAGE === "1" ? undefined : packagedBrowser(cache);
  const browser = packaged ? await tried(packaged.executable, packaged.env, where) : undefined;
  if (browser) return browser;
  throw new SetupStop(
    "No browser was found and none could be fetched; one is needed to make PDFs.\n" +
      "Install one (on Debian or Ubuntu: sudo apt-get install chromium), or name one in PUPPETEER_EXECUTABLE_PATH.\n" +
      "The site alone needs none: npm run trayleaf -- build --no-pdf",
  );
}
