import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { filesBelow, sha256 } from "../../lib/publish/manifest.ts";
import { plant, trayleaf } from "../cli/run-cli.ts";
import { smallLibrary } from "../fixtures/small-library.ts";

const run = (...words: readonly string[]): boolean =>
  spawnSync(words[0] ?? "", words.slice(1), { stdio: "ignore" }).status === 0;
const home = mkdtempSync(join(tmpdir(), "trayleaf-disk-"));
const disk = join(home, "disk");
const library = join(home, "library");
const out = join(disk, "dist");
mkdirSync(disk);
/** Only a user who may mount can make a disk that is really full. */
const able = run("mount", "-t", "tmpfs", "-o", "size=64m", "tmpfs", disk);

const build = (...more: readonly string[]) =>
  trayleaf(["build", "--library", library, "--out", out, "--today", "2026-11-25", ...more], {
    PUPPETEER_EXECUTABLE_PATH:
      process.env["PUPPETEER_EXECUTABLE_PATH"] ?? "/usr/lib/chromium/chromium",
  });
const tree = (): readonly string[] =>
  filesBelow(out).map((file) => `${file} ${sha256(readFileSync(join(out, file)))}`);
const usedKib = (): number =>
  Number(spawnSync("du", ["-sk", disk], { encoding: "utf8" }).stdout.split("\t")[0]);
let before: readonly string[] = [];

beforeAll(() => {
  if (!able) return;
  smallLibrary(library);
  const { code, out: said, error } = build("--no-pdf");
  if (code !== 0) throw new Error(said + error);
  before = tree();
  plant(library, "publisher.yaml", "555 0100", "555 0199");
}, 120_000);
afterAll(() => {
  if (able) run("umount", disk);
  rmSync(home, { recursive: true, force: true });
});

describe.runIf(able)("a build on a disk of its own", () => {
  test.each([
    ["has no room left", 0, "--no-pdf"],
    ["has room for some pages", 600, "--no-pdf"],
    ["has room for some PDFs", 300, "--pdf"],
  ])(
    "that %s stops with 3 and leaves the last build as it was",
    (_, spare, how) => {
      expect(run("mount", "-o", `remount,size=${usedKib() + spare}k`, disk)).toBe(true);
      const { code, error } = build(...(how === "--no-pdf" ? [how] : []));
      expect(run("mount", "-o", "remount,size=64m", disk)).toBe(true);
      expect(error).toContain("the disk is full");
      expect(code).toBe(3);
      expect(tree()).toEqual(before);
      expect(readdirSync(disk)).toEqual(["dist"]);
    },
    180_000,
  );

  test("that can only be read stops with 3 and leaves the last build as it was", () => {
    expect(run("mount", "-o", "remount,ro", disk)).toBe(true);
    const { code, error } = build("--no-pdf");
    expect(run("mount", "-o", "remount,rw", disk)).toBe(true);
    expect(error).toMatch(/can only be read|Cannot write/);
    expect(code).toBe(3);
    expect(tree()).toEqual(before);
  }, 180_000);
});
