import { existsSync, readdirSync, realpathSync, statSync } from "node:fs";
import { basename, dirname, isAbsolute, join, relative, resolve } from "node:path";
import { Stop } from "../model/stop.ts";
import { readManifest } from "./manifest.ts";

/** The path with the links of all that exists of it followed. */
function real(path: string): string {
  const full = resolve(path);
  if (existsSync(full)) return realpathSync(full);
  const parent = dirname(full);
  return parent === full ? full : join(real(parent), basename(full));
}

/** True when `inner` is `outer` or lies below it. */
function isWithin(inner: string, outer: string): boolean {
  const path = relative(real(outer), real(inner));
  return path === "" || !(path === ".." || path.startsWith("../") || isAbsolute(path));
}

/** Throws a Stop when `out` may not be replaced by a build: it touches the library, is no folder, or holds what Trayleaf did not write. */
export function refuseOutput(library: string, out: string): void {
  if (isWithin(out, library) || isWithin(library, out))
    throw new Stop(
      2,
      `The folder to write, ${out}, and the library, ${library}, lie in one another: a build replaces the whole folder.`,
      "Choose another --out.",
    );
  if (!existsSync(out)) return;
  if (!statSync(out).isDirectory())
    throw new Stop(2, `${out} is no folder.`, "Choose another --out.");
  if (readdirSync(out).length > 0 && readManifest(out) === undefined)
    throw new Stop(
      2,
      `${out} holds files that Trayleaf did not write.`,
      "Choose another --out, or empty that folder yourself.",
    );
}
