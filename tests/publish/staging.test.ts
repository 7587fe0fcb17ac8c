import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { beside } from "../../lib/publish/beside.ts";
import { takeLock } from "../../lib/publish/lock.ts";
import { readManifest, writeManifest } from "../../lib/publish/manifest.ts";
import { dropStaging, openStaging, recover, swapIn } from "../../lib/publish/staging.ts";

let home = "";
let out = "";
const told = { inputs: "x", summary: [], prints: {} };

function build(text: string): string {
  const staging = openStaging(out);
  writeFileSync(join(staging, "card.txt"), text);
  writeManifest(staging, told);
  return staging;
}
const shown = () => readFileSync(join(out, "card.txt"), "utf8");

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), "trayleaf-publish-"));
  out = join(home, "dist");
});
afterEach(() => rmSync(home, { recursive: true, force: true }));

describe("publishing", () => {
  it("replaces the whole old folder, so that pages of removed sources are gone", () => {
    const first = build("one");
    writeFileSync(join(first, "removed.txt"), "old page");
    swapIn(first, out);
    swapIn(build("two"), out);
    expect(shown()).toBe("two");
    expect(existsSync(join(out, "removed.txt"))).toBe(false);
    expect(existsSync(beside(out, "previous"))).toBe(false);
  });

  it("leaves the old folder as it was when a build is dropped", () => {
    swapIn(build("one"), out);
    dropStaging(build("two"));
    expect(shown()).toBe("one");
  });

  it("finishes a swap that was killed between its two renames", () => {
    swapIn(build("one"), out);
    const staging = build("two");
    const previous = beside(out, "previous");
    writeFileSync(beside(out, "journal"), basename(staging));
    mkdirSync(previous);
    writeFileSync(join(previous, "card.txt"), "one");
    rmSync(out, { recursive: true });
    recover(out);
    expect(shown()).toBe("two");
    expect(existsSync(beside(out, "journal"))).toBe(false);
  });

  it("puts the old folder back when the new one is lost", () => {
    const previous = beside(out, "previous");
    mkdirSync(previous);
    writeFileSync(join(previous, "card.txt"), "one");
    writeFileSync(beside(out, "journal"), ".dist-staging-1");
    recover(out);
    expect(shown()).toBe("one");
  });

  it.each([
    ["is empty", ""],
    ["is cut short", ".dist-sta"],
    ["names a folder elsewhere", "../precious"],
  ])("keeps the old folder when the journal %s", (_, journal) => {
    swapIn(build("one"), out);
    writeFileSync(beside(out, "journal"), journal);
    recover(out);
    expect(shown()).toBe("one");
    expect(existsSync(beside(out, "journal"))).toBe(false);
  });

  it("removes staging folders that a killed build left", () => {
    const staging = build("half");
    recover(out);
    expect(existsSync(staging)).toBe(false);
  });

  it("refuses an empty file", () => {
    const staging = openStaging(out);
    writeFileSync(join(staging, "empty.html"), "");
    expect(() => writeManifest(staging, told)).toThrow(/empty file/);
  });

  it("tells size and hash of every file", () => {
    swapIn(build("abc"), out);
    expect(readManifest(out)?.files["card.txt"]).toEqual({
      size: 3,
      sha256: "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
    });
  });
});

describe("the lock", () => {
  it("lets one build in and tells the second to wait", () => {
    const unlock = takeLock(out);
    expect(() => takeLock(out)).toThrow(/Another build/);
    unlock();
    takeLock(out)();
  });

  it("takes over the lock of a process that is gone", () => {
    writeFileSync(beside(out, "lock"), "4194303");
    takeLock(out)();
    expect(existsSync(beside(out, "lock"))).toBe(false);
  });
});
