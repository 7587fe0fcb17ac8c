import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { filesBelow, sha256 } from "../../lib/publish/manifest.ts";
import { smallLibrary } from "../fixtures/small-library.ts";
import { ownFolder, plant, trayleaf } from "./run-cli.ts";

const browser = process.env["PUPPETEER_EXECUTABLE_PATH"] ?? "/usr/lib/chromium/chromium";
/** The most characters that a step's words may have. */
const most = 320;
const says = [
  "Reduce the fracture; confirm the plate.",
  "Feel or image the hooks before the first screw.",
  "Seat both hooks over the tip of the bone.",
  "Loaded screw in an oblong hole away from the hooks.",
  "Lag screw in the head hole, if planned.",
  "Neutral screws in the remaining planned holes.",
  "Wires out; count wires, instruments and pieces; record the implants.",
];

test("A library with an over-full card stops with 1, says what to split with numbers, and leaves the last build as it was.", () => {
  const home = ownFolder();
  const library = join(home, "library");
  const out = join(home, "dist");
  smallLibrary(library);
  const build = (...more: readonly string[]) =>
    trayleaf(["build", "--library", library, "--out", out, "--today", "2026-11-25", ...more], {
      PUPPETEER_EXECUTABLE_PATH: browser,
    });
  const tree = () =>
    filesBelow(out)
      .map((file) => `${file} ${sha256(readFileSync(join(out, file)))}`)
      .sort();
  const first = build("--no-pdf");
  expect(first.code, first.out + first.error).toBe(0);
  const before = tree();
  for (const say of says) {
    const longer = `${say} `.repeat(Math.floor(most / (say.length + 1))).trim();
    plant(library, "systems/pebblefin/procedures/hook-plate.yaml", say, longer);
  }
  const { code, out: said, error } = build();
  expect(code, said + error).toBe(1);
  expect(said).toMatch(
    /got [\d.]+ mm over, set as close as may be: \d of 8 rows fit, "[^"]+"[^\n]* do not/,
  );
  expect(said).toContain("Put at most");
  expect(tree()).toEqual(before);
  expect(readdirSync(home).sort()).toEqual(["dist", "library"]);
}, 240_000);
