import { spawnSync } from "node:child_process";

/**
 * What a browser answers to --version, as "Chromium 156.0.7300.1"; undefined when it is none or does not run.
 * @param {string} executable
 * @param {Readonly<Record<string, string>>} [env] variables that it needs besides ours
 * @returns {string | undefined}
 */
export function browserVersion(executable, env = {}) {
  const ended = spawnSync(executable, ["--version"], {
    env: { ...process.env, ...env },
    encoding: "utf8",
    timeout: 15_000,
    stdio: ["ignore", "pipe", "ignore"],
  });
  if (ended.status !== 0) return undefined;
  return /^.*\b\d+\.\d+\.\d+\.\d+\b/m.exec(ended.stdout)?.[0].trim();
}
