import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { checkLibrary } from "../../lib/index.ts";
import type { SheetView } from "../../lib/model/sheet.ts";
import { keyOf, printLibrary } from "../../lib/print-library.ts";
import { filesBelow, sha256, writeManifest } from "../../lib/publish/manifest.ts";
import { renderSheet } from "../../lib/site/render-sheet.ts";
import { ownFolder } from "../cli/run-cli.ts";

const today = "2026-11-25";
const all = checkLibrary("content", today).sheets ?? [];
const sheets = all
  .filter(({ system, kind }) => system === "pebblefin" && kind === "plate-map")
  .slice(0, 3);
const [first, ...others] = sheets;
if (!first || others.length < 2) throw new Error("The demo has too few plate maps");
const changed: readonly SheetView[] = [{ ...first, title: `${first.title} changed` }, ...others];
const pack = "packs/pebblefin.a4.pdf";

/** Prints sheets into a folder as a build does, taking over what `before` holds; gives every file's hash and what was printed anew. */
async function built(own: readonly SheetView[], before: string) {
  const staging = join(ownFolder(), "made");
  mkdirSync(staging);
  const fragments = new Map(own.map((sheet) => [keyOf(sheet), renderSheet(sheet)]));
  const { anew, records, fits } = await printLibrary(own, fragments, {
    out: before,
    staging,
    today,
  });
  const hashes = Object.fromEntries(
    filesBelow(staging).map((file) => [file, sha256(readFileSync(join(staging, file)))]),
  );
  writeManifest(staging, { inputs: "", summary: [], prints: records });
  return { staging, hashes, anew, fits };
}

beforeAll(() => {
  process.env["PUPPETEER_EXECUTABLE_PATH"] ??= "/usr/lib/chromium/chromium";
});

describe("printing again", { timeout: 120_000 }, () => {
  it("prints nothing anew when nothing changed, one card and its pack when one did, and equals a clean build bit for bit", async () => {
    const clean = await built(sheets, "nowhere");
    expect(clean.anew).toEqual([...sheets.map((sheet) => `pdf/${keyOf(sheet)}.pdf`), pack]);
    const again = await built(sheets, clean.staging);
    expect(again.anew).toEqual([]);
    expect(again.hashes).toEqual(clean.hashes);
    const after = await built(changed, clean.staging);
    expect(after.anew).toEqual([`pdf/${keyOf(first)}.pdf`, pack]);
    const cleanAfter = await built(changed, "nowhere");
    expect(after.hashes).toEqual(cleanAfter.hashes);
    expect(after.fits).toEqual(cleanAfter.fits);
  });

  it("prints anew what is no longer as it was written", async () => {
    const { staging, hashes } = await built(sheets, "nowhere");
    const file = `pdf/${keyOf(first)}.pdf`;
    writeFileSync(join(staging, file), "harmed");
    const again = await built(sheets, staging);
    expect(again.anew).toEqual([file]);
    expect(again.hashes).toEqual(hashes);
  });
});
