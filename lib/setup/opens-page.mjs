import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const limit = 30_000;
const quiet = ["--headless", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run"];

/**
 * The questions of the debugging protocol, each made from the answer to the one before: open a page, enter it, reckon there.
 * @type {readonly ((answer: { targetId?: string, sessionId?: string }) => object)[]}
 */
const questions = [
  () => ({ method: "Target.createTarget", params: { url: "about:blank" } }),
  ({ targetId }) => ({
    method: "Target.attachToTarget",
    params: { targetId, flatten: true },
  }),
  ({ sessionId }) => ({ method: "Runtime.evaluate", sessionId, params: { expression: "6 * 7" } }),
];

/**
 * Whether a browser, started with some flags and variables, opens a page and runs a script on it; asked over the pipe that
 * printing uses too, since not every build of a browser knows the options that print a page by themselves.
 * @param {string} executable
 * @param {readonly string[]} flags
 * @param {Readonly<Record<string, string>>} env
 * @returns {Promise<boolean>}
 */
export function opensPage(executable, flags, env) {
  const profile = mkdtempSync(join(tmpdir(), "trayleaf-profile-"));
  return new Promise((done) => {
    const child = spawn(
      executable,
      [...quiet, ...flags, "--remote-debugging-pipe", `--user-data-dir=${profile}`],
      {
        env: { ...process.env, ...env },
        stdio: ["ignore", "ignore", "ignore", "pipe", "pipe"],
        detached: true,
      },
    );
    const killGroup = () => {
      try {
        if (child.pid) process.kill(-child.pid, "SIGKILL");
      } catch {
        // The group has ended already.
      }
    };
    const timer = setTimeout(killGroup, limit);
    const asking = /** @type {import("node:stream").Writable} */ (child.stdio[3]);
    const answering = /** @type {import("node:stream").Readable} */ (child.stdio[4]);
    let opened = false;
    let asked = 0;
    /** @param {object} answer */
    const ask = (answer) => {
      const question = questions[asked++]?.(answer);
      if (question) asking.write(`${JSON.stringify({ id: asked, ...question })}\0`);
    };
    let seen = "";
    asking.on("error", () => {});
    answering.on("error", () => {});
    answering.on("data", (part) => {
      seen += part;
      const messages = seen.split("\0");
      seen = messages.pop() ?? "";
      for (const message of messages) {
        const { id, result, error } = JSON.parse(message);
        if (id === asked && result) ask(result);
        if (error || id === questions.length) {
          opened = result?.result?.value === 42;
          killGroup();
        }
      }
    });
    child.on("error", () => {});
    child.on("close", () => {
      clearTimeout(timer);
      killGroup();
      rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
      done(opened);
    });
    ask({});
  });
}
