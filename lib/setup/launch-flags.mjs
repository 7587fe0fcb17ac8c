import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const limit = 30_000;

/**
 * @param {string} executable
 * @param {readonly string[]} flags
 * @param {Readonly<Record<string, string>>} env
 * @returns {Promise<boolean>}
 */
function opensPage(executable, flags, env) {
  const profile = mkdtempSync(join(tmpdir(), "trayleaf-profile-"));
  const words = ["--headless", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run"];
  return new Promise((done) => {
    const child = spawn(
      executable,
      [...words, ...flags, `--user-data-dir=${profile}`, "--dump-dom", "data:text/html,<p>leaf"],
      { env: { ...process.env, ...env }, stdio: ["ignore", "pipe", "ignore"], detached: true },
    );
    const killGroup = () => {
      try {
        if (child.pid) process.kill(-child.pid, "SIGKILL");
      } catch {
        // The group has ended already.
      }
    };
    const timer = setTimeout(killGroup, limit);
    let seen = "";
    child.stdout.on("data", (part) => {
      seen += part;
    });
    child.on("error", () => {});
    child.on("close", () => {
      clearTimeout(timer);
      killGroup();
      rmSync(profile, { recursive: true, force: true, maxRetries: 3 });
      done(seen.includes("<p>leaf"));
    });
  });
}

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
