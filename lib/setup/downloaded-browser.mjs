import { spawn } from "node:child_process";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const program = fileURLToPath(new URL("./download-browser.mjs", import.meta.url));
const silence = 20_000;
const whole = 240_000;

/**
 * Downloads a browser into the cache and gives its path; undefined when it fails, falls silent for 20 s or takes over 4 min.
 * @param {string} cache
 * @returns {Promise<string | undefined>}
 */
export function downloadedBrowser(cache) {
  process.stderr.write("Downloading a browser (once)…\n");
  return new Promise((done) => {
    const child = spawn(process.execPath, [program, join(cache, "downloaded")], {
      stdio: ["ignore", "pipe", "ignore"],
    });
    const end = () => child.kill("SIGKILL");
    const last = setTimeout(end, whole);
    let quiet = setTimeout(end, silence);
    let seen = "";
    child.stdout.on("data", (part) => {
      seen += part;
      clearTimeout(quiet);
      quiet = setTimeout(end, silence);
    });
    child.on("close", (code) => {
      clearTimeout(last);
      clearTimeout(quiet);
      done(code === 0 ? seen.trim().split("\n").at(-1) : undefined);
    });
  });
}
