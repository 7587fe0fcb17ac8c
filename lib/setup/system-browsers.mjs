import { delimiter, join } from "node:path";

// The shell prints in about half the time of a whole browser. Real binaries before the names in PATH: a distribution's shell wrapper outlives the process that it starts.
const installed = [
  "/usr/lib/chromium/chromium-headless-shell",
  "/usr/lib/chromium/chromium",
  "/usr/lib/chromium-browser/chromium-browser",
  "/usr/lib64/chromium-browser/chromium-browser",
  "/opt/google/chrome/chrome",
  "/opt/microsoft/msedge/msedge",
];

const names = [
  "chromium-headless-shell",
  "chrome-headless-shell",
  "headless_shell",
  "chromium",
  "chromium-browser",
  "google-chrome-stable",
  "google-chrome",
  "microsoft-edge-stable",
  "microsoft-edge",
];

/**
 * Where a browser may lie on this system, in the order to try; none of them need exist.
 * @param {{ path: string, fixed?: readonly string[] }} where `path` as in the PATH variable
 * @returns {string[]}
 */
export function systemBrowsers({ path, fixed = installed }) {
  const folders = path.split(delimiter).filter((folder) => folder !== "");
  return [...fixed, ...names.flatMap((name) => folders.map((folder) => join(folder, name)))];
}
