import { createHash } from "node:crypto";
import { existsSync, lstatSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import type { PrintRecord } from "../model/built.ts";
import { Stop } from "../model/stop.ts";

/** The marker file at the root of every folder we write. */
const manifestName = ".trayleaf.json";

/** What `sha256sum -c` reads. */
const sumsName = "SHA256SUMS";

/** What a finished output folder says of itself; paths use forward slashes. */
export type Manifest = {
  readonly marker: "trayleaf";
  /** Hash of all that went in; the next start compares it. */
  readonly inputs: string;
  readonly summary: readonly string[];
  /** What each printed file was made from, so that an unchanged card is not printed twice. */
  readonly prints: Readonly<Record<string, PrintRecord>>;
  readonly files: Readonly<Record<string, { readonly size: number; readonly sha256: string }>>;
};

/** SHA-256 in hex. */
export const sha256 = (data: string | Uint8Array): string =>
  createHash("sha256").update(data).digest("hex");

function walk(folder: string, root: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (lstatSync(path).isSymbolicLink())
      throw new Stop(5, `A link in the output: ${path}`, "Report this.");
    return entry.isDirectory() ? walk(path, root) : [relative(root, path).split(sep).join("/")];
  });
}

/** All files below a folder, in code-unit order; refuses links. */
export const filesBelow = (root: string): string[] =>
  walk(root, root).sort((a, b) => (a < b ? -1 : 1));

/** Hashes every file below `root`, writes the sums for anybody to check and the manifest; an empty file is refused. */
export function writeManifest(
  root: string,
  told: {
    readonly inputs: string;
    readonly summary: readonly string[];
    readonly prints: Manifest["prints"];
  },
): Manifest {
  const files: Record<string, { size: number; sha256: string }> = {};
  for (const file of filesBelow(root)) {
    const bytes = readFileSync(join(root, file));
    if (bytes.length === 0)
      throw new Stop(5, `The build wrote an empty file: ${file}`, "Report this.");
    files[file] = { size: bytes.length, sha256: sha256(bytes) };
  }
  const sums = Object.entries(files).map(([file, { sha256: sum }]) => `${sum}  ${file}\n`);
  const listed = Buffer.from(sums.join(""));
  writeFileSync(join(root, sumsName), listed);
  files[sumsName] = { size: listed.length, sha256: sha256(listed) };
  const manifest: Manifest = { marker: "trayleaf", ...told, files };
  writeFileSync(join(root, manifestName), `${JSON.stringify(manifest, null, 1)}\n`);
  return manifest;
}

/** The manifest of an output folder, or nothing when there is none that can be read. */
export function readManifest(root: string): Manifest | undefined {
  const file = join(root, manifestName);
  if (!existsSync(file)) return undefined;
  try {
    const told = JSON.parse(readFileSync(file, "utf8")) as Manifest;
    return told.marker === "trayleaf" ? told : undefined;
  } catch {
    return undefined;
  }
}
