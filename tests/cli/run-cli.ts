import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { onTestFinished } from "vitest";
import { asJavaScript } from "../../lib/setup/as-javascript.mjs";
import { places } from "../../lib/setup/places.mjs";

/** The command line as it runs. */
export const program = await asJavaScript(places.commandLine);

/** What the command line is given besides our own variables, as when it is started by hand: where its drawings are kept. */
export const variables = { TRAYLEAF_FIGURES: join(dirname(program), "figures.json") };

/** What a run of the command line printed, and its exit code. */
export type Ran = { readonly code: number | null; readonly out: string; readonly error: string };

/** Runs `trayleaf` with these words, without colour, in the project's folder. */
export function trayleaf(
  words: readonly string[],
  environment: Readonly<Record<string, string>> = {},
): Ran {
  const { SOURCE_DATE_EPOCH: _day, ...inherited } = process.env;
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...words], {
    encoding: "utf8",
    env: { ...inherited, ...variables, NO_COLOR: "1", ...environment },
  });
  return { code: status, out: stdout, error: stderr };
}

/** A folder of the test's own, gone when it ends. */
export function ownFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "trayleaf-test-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A copy of the demo library in a folder of the test's own. */
export function ownLibrary(): string {
  const library = join(ownFolder(), "library");
  cpSync("content", library, { recursive: true });
  return library;
}

/** Replaces a text that stands once in a file; fails when it does not. */
export function plant(library: string, file: string, find: string, put: string): void {
  const path = join(library, file);
  const text = readFileSync(path, "utf8");
  if (text.split(find).length !== 2) throw new Error(`${file} does not hold "${find}" once`);
  writeFileSync(
    path,
    text.replace(find, () => put),
  );
}
