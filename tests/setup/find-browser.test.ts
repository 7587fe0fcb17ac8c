import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { findBrowser } from "../../lib/setup/find-browser.mjs";
import { SetupStop } from "../../lib/setup/setup-stop.mjs";

let folder = "";
let told: string[] = [];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "trayleaf-browsers-"));
  told = [];
  vi.spyOn(process.stderr, "write").mockImplementation((text) => told.push(String(text)) > 0);
});

afterEach(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true, force: true });
});

const version = 'if [ "$1" = --version ]; then echo "Chromium 156.0.1.2"; exit 0; fi';
const page = String.raw`printf '{"id":1,"result":{"targetId":"t"}}\0{"id":2,"result":{"sessionId":"s"}}\0{"id":3,"result":{"result":{"value":42}}}\0' >&4`;

/** A stand-in for a browser: a shell script in a folder of its own below the temporary one. */
function standIn(place: string, name: string, lines: readonly string[]): string {
  const file = join(folder, place, name);
  mkdirSync(join(folder, place), { recursive: true });
  writeFileSync(file, ["#!/bin/sh", ...lines, ""].join("\n"));
  chmodSync(file, 0o755);
  return file;
}

function find(env: Record<string, string>, fixed: readonly string[] = []) {
  const places = ["first", "second"].map((place) => join(folder, place)).join(":");
  const rest = { PATH: places, TRAYLEAF_SKIP_DOWNLOAD: "1", TRAYLEAF_SKIP_PACKAGE: "1" };
  return findBrowser({
    root: folder,
    cache: join(folder, "cache"),
    env: { ...rest, ...env },
    fixed,
  });
}

test("A name in PATH is taken when it tells its version and opens a page.", async () => {
  const executable = standIn("first", "google-chrome", [version, page]);
  expect(await find({})).toMatchObject({ executable, version: "Chromium 156.0.1.2" });
});

test("A real binary goes before every name in PATH.", async () => {
  standIn("first", "chromium", [version, page]);
  const real = standIn("real", "chromium", [version, page]);
  expect(await find({}, [join(folder, "absent"), real])).toMatchObject({ executable: real });
});

const unfit = [
  ["ends with an error when asked for its version", ["exit 1"]],
  ["answers without a version", ["echo hello"]],
  ["tells its version but opens no page", [version, "exit 1"]],
] as const;

test.each(unfit)("A candidate that %s is passed over with a line.", async (_, lines) => {
  const bad = standIn("first", "chromium", lines);
  const executable = standIn("second", "chromium", [version, page]);
  expect(await find({})).toMatchObject({ executable });
  expect(told.join("")).toContain(`Passed over ${bad}`);
});

test("A named browser is taken before all others.", async () => {
  standIn("first", "chromium", [version, page]);
  const named = standIn("named", "mine", [version, page]);
  expect(await find({ PUPPETEER_EXECUTABLE_PATH: named })).toMatchObject({ executable: named });
});

test.each([
  ["is absent", undefined],
  ["is no browser", ["exit 1"]],
] as const)(
  "A named browser that %s stops with exit 3, though PATH has another.",
  async (_, lines) => {
    standIn("first", "chromium", [version, page]);
    const named = lines ? standIn("named", "mine", lines) : join(folder, "nothing");
    const stopped = await find({ PUPPETEER_EXECUTABLE_PATH: named }).catch((error) => error);
    expect(stopped).toBeInstanceOf(SetupStop);
    expect(stopped).toMatchObject({ exit: 3, message: expect.stringContaining(named) });
  },
);

test("With no browser anywhere it stops with exit 3 and says how to get one.", async () => {
  standIn("first", "chromium", [version, page]);
  const stopped = await find({ TRAYLEAF_SKIP_SYSTEM: "1" }).catch((error) => error);
  expect(stopped).toMatchObject({
    exit: 3,
    message: expect.stringContaining("sudo apt-get install chromium"),
  });
});
