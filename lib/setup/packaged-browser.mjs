import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { installPackages } from "./install-packages.mjs";

const source = fileURLToPath(new URL("./browser-package/", import.meta.url));
const program = fileURLToPath(new URL("./unpack-browser.mjs", import.meta.url));

/**
 * Installs the package that carries a browser for Linux on x64 into the cache and unpacks it there.
 * @param {string} cache
 * @returns {{ executable: string, env: Record<string, string> } | undefined} undefined when it cannot be had
 */
export function packagedBrowser(cache) {
  if (process.platform !== "linux" || process.arch !== "x64") return undefined;
  process.stderr.write("Fetching a browser as a package (once, 65 MB)…\n");
  const folder = join(cache, "packaged");
  const unpacked = join(folder, "unpacked");
  // What lies there half unpacked is not completed by the package.
  rmSync(unpacked, { recursive: true, force: true });
  mkdirSync(unpacked, { recursive: true });
  for (const name of ["package.json", "package-lock.json"]) {
    cpSync(join(source, name), join(folder, name));
  }
  try {
    installPackages(folder);
  } catch {
    return undefined;
  }
  // The package unpacks the libraries that a bare system lacks only where it believes to run in this cloud runtime.
  const runtime = "nodejs22.x";
  const ended = spawnSync(process.execPath, [program, folder], {
    encoding: "utf8",
    timeout: 120_000,
    stdio: ["ignore", "pipe", "inherit"],
    env: {
      ...process.env,
      TMPDIR: unpacked,
      AWS_EXECUTION_ENV: `AWS_Lambda_${runtime}`,
      AWS_LAMBDA_JS_RUNTIME: runtime,
    },
  });
  const executable = ended.stdout.trim();
  if (ended.status !== 0 || executable === "") return undefined;
  const libraries = [join(unpacked, "al2023", "lib"), process.env.LD_LIBRARY_PATH ?? ""];
  return {
    executable,
    env: { LD_LIBRARY_PATH: libraries.filter((path) => path !== "").join(":") },
  };
}
