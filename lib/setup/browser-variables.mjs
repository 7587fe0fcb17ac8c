/**
 * What the build and the tests read to start the browser: its path, its version, its flags parted by spaces, its libraries and fonts.
 * @param {import("./find-browser.mjs").Browser} browser
 * @returns {Record<string, string>}
 */
export function browserVariables({ executable, version, flags, env }) {
  return {
    ...env,
    PUPPETEER_EXECUTABLE_PATH: executable,
    TRAYLEAF_BROWSER_VERSION: version,
    TRAYLEAF_BROWSER_ARGS: flags.join(" "),
  };
}
