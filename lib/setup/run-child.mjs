import { spawn } from "node:child_process";

const signals = /** @type {const} */ (["SIGINT", "SIGTERM", "SIGHUP"]);
const codes = { SIGINT: 130, SIGTERM: 143, SIGHUP: 129 };

/**
 * Runs Node on some words with our own standard streams, hands on the signals that we get, and gives its exit code.
 * @param {readonly string[]} words
 * @param {Readonly<Record<string, string>>} env variables besides ours
 * @returns {Promise<number>}
 */
export function runChild(words, env) {
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, words, {
      stdio: "inherit",
      env: { ...process.env, ...env },
    });
    const handOn = (/** @type {NodeJS.Signals} */ signal) => child.kill(signal);
    for (const signal of signals) process.on(signal, handOn);
    child.on("error", failed);
    child.on("close", (code, signal) => {
      for (const each of signals) process.off(each, handOn);
      done(code ?? codes[/** @type {keyof typeof codes} */ (signal)] ?? 70);
    });
  });
}
