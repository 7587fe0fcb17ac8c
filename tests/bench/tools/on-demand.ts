import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { findNpm } from "../../../lib/setup/find-npm.mjs";
import { places } from "../../../lib/setup/places.mjs";

/** Installs a package that only a bench needs into a folder of the cache, once, and gives that folder; undefined when it cannot be had. */
export function onDemand(name: string, version: string): string | undefined {
  const folder = join(places.cache, "bench", `${name.replace("/", "-")}-${version}`);
  if (existsSync(join(folder, "node_modules", name))) return folder;
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "package.json"), "{}\n");
  const npm = findNpm(process.env, process.execPath);
  const words = ["install", "--ignore-scripts", "--no-audit", "--no-fund", `${name}@${version}`];
  const { status } = spawnSync(process.execPath, [npm, ...words], { cwd: folder, stdio: "ignore" });
  return status === 0 ? folder : undefined;
}
