import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
} from "node:fs";
import { basename, join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { filesBelow, hashFiles } from "./files-below.mjs";
import { places } from "./places.mjs";

const week = 7 * 24 * 3600 * 1000;

/** The first 16 hex digits of a SHA-256 over a program's name and all code that it may import. */
function stateOf(/** @type {string} */ program, /** @type {string} */ root) {
  const folders = ["lib", ...(relative(root, program).startsWith("tests") ? ["tests"] : [])];
  const files = [
    ...folders.flatMap((folder) => filesBelow(join(root, folder))),
    join(root, "package-lock.json"),
  ];
  const hash = createHash("sha256").update(program);
  hashFiles(
    hash,
    root,
    files.filter((name) => /\.(ts|mjs|json)$/.test(name)),
  );
  return hash.digest("hex").slice(0, 16);
}

// Not as one word: here too it would be replaced.
const address = ["import", "meta", "url"].join(".");

/** @type {import("esbuild").Plugin} Every module keeps the address of its source: what lies beside it is found from there. */
const ownAddress = {
  name: "own address",
  setup(building) {
    building.onLoad({ filter: /\.(ts|mjs)$/ }, ({ path }) => ({
      contents: readFileSync(path, "utf8").replaceAll(
        address,
        JSON.stringify(pathToFileURL(path).href),
      ),
      loader: path.endsWith(".ts") ? "ts" : "js",
    }));
  },
};

/**
 * One of our TypeScript programs as JavaScript in the cache, made once for each state of the code; the packages must be
 * installed. Gives the path to run or to import.
 * @param {string} program
 * @param {{ root: string, cache: string }} where
 * @returns {Promise<string>}
 */
export async function asJavaScript(program, { root, cache } = places) {
  const kept = join(cache, "code");
  const folder = join(kept, stateOf(program, root));
  const made = join(folder, basename(program).replace(/\.ts$/, ".mjs"));
  if (existsSync(made)) return made;
  const { build } = await import("esbuild");
  mkdirSync(kept, { recursive: true });
  for (const name of readdirSync(kept))
    if (Date.now() - statSync(join(kept, name)).mtimeMs > week)
      rmSync(join(kept, name), { recursive: true, force: true });
  const fresh = mkdtempSync(join(kept, "new-"));
  try {
    await build({
      entryPoints: [program],
      outdir: fresh,
      outExtension: { ".js": ".mjs" },
      bundle: true,
      splitting: true,
      packages: "external",
      platform: "node",
      format: "esm",
      target: "node20",
      plugins: [ownAddress],
      logLevel: "silent",
    });
    renameSync(fresh, folder);
  } catch (error) {
    rmSync(fresh, { recursive: true, force: true });
    if (!existsSync(made)) throw error;
  }
  return made;
}
