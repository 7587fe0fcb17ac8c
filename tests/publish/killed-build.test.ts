import { spawn, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { describe, expect, it } from "vitest";
import { filesBelow, sha256, writeManifest } from "../../lib/publish/manifest.ts";
import { ownFolder, program, variables } from "../cli/run-cli.ts";
import { smallLibrary } from "../fixtures/small-library.ts";

const slow = 240_000;
const env = { ...process.env, ...variables };

/** A folder with an earlier build of one page beside nothing else, and the words that build into it anew. */
function earlier(): { home: string; out: string; words: readonly string[] } {
  const home = ownFolder();
  const out = join(home, "dist");
  mkdirSync(out);
  writeFileSync(join(out, "index.html"), "the earlier page");
  writeManifest(out, { inputs: "x", summary: [], prints: {} });
  const library = join(ownFolder(), "library");
  smallLibrary(library);
  const asked = ["--no-pdf", "--today", "2026-11-25", "--library", library, "--out", out];
  return { home, out, words: [program, "build", ...asked] };
}
const hashOf = (out: string): string =>
  sha256(
    filesBelow(out)
      .map((file) => `${file} ${sha256(readFileSync(join(out, file)))}`)
      .join("\n"),
  );
const stagings = (home: string) => readdirSync(home).filter((name) => name.includes("-staging-"));

describe("a build that is cut off", () => {
  it(
    "leaves the earlier build untouched when it is killed as it writes, and the next one recovers",
    async () => {
      const { home, out, words } = earlier();
      const before = hashOf(out);
      const child = spawn(process.execPath, words, { stdio: "ignore", env });
      const ended = new Promise((done) => child.once("close", done));
      while (stagings(home).length === 0 && child.exitCode === null) await wait(20);
      child.kill("SIGKILL");
      await ended;
      expect(stagings(home)).toHaveLength(1);
      expect(hashOf(out)).toBe(before);
      const { status } = spawnSync(process.execPath, words, { env });
      expect(status).toBe(0);
      expect(readdirSync(home)).toEqual(["dist"]);
      expect(existsSync(join(out, "cards"))).toBe(true);
    },
    slow,
  );

  it(
    "stops with 3 and changes nothing when a file cannot be written to its end",
    () => {
      const { home, out, words } = earlier();
      const before = hashOf(out);
      const { status, stderr } = spawnSync(
        "sh",
        ["-c", 'ulimit -f 64; exec "$0" "$@"', process.execPath, ...words],
        { encoding: "utf8", env },
      );
      expect(stderr).toContain("a file may not be that large (EFBIG)");
      expect(status).toBe(3);
      expect(hashOf(out)).toBe(before);
      expect(readdirSync(home)).toEqual(["dist"]);
    },
    slow,
  );
});
