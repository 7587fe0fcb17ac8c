import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { findNpm } from "./find-npm.mjs";
import { SetupStop } from "./setup-stop.mjs";

/** @param {string} folder */
function wantedStamp(folder) {
  return createHash("sha256")
    .update(readFileSync(join(folder, "package-lock.json")))
    .update(`${process.platform} ${process.arch} ${process.versions.modules}`)
    .digest("hex");
}

/** @param {string} file */
const readOr = (file) => (existsSync(file) ? readFileSync(file, "utf8") : "");

/**
 * Installs a folder's locked packages without running their scripts, unless the last installation was of the same
 * lock file, platform and Node ABI, or TRAYLEAF_SKIP_INSTALL=1 says that others see to it. Says so on stderr when it installs.
 * @param {string} folder
 */
export function installPackages(folder) {
  const stampFile = join(folder, "node_modules", ".setup-stamp");
  const stamp = wantedStamp(folder);
  if (readOr(stampFile) === stamp || process.env.TRAYLEAF_SKIP_INSTALL === "1") return;
  process.stderr.write("Installing the locked packages (once)…\n");
  const npm = findNpm(process.env, process.execPath);
  const words = [npm, "ci", "--ignore-scripts", "--include=dev", "--no-audit", "--no-fund"];
  const ended = spawnSync(process.execPath, words, {
    cwd: folder,
    stdio: ["ignore", "ignore", "inherit"],
  });
  if (ended.status !== 0) {
    throw new SetupStop(
      "The packages could not be installed (see above). Check the network, then start again.",
    );
  }
  writeFileSync(stampFile, stamp);
}
