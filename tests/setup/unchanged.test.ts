import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { hashInputs, unchanged } from "../../lib/setup/unchanged.mjs";

let root = "";

function write(file: string, text: string): void {
  mkdirSync(dirname(join(root, file)), { recursive: true });
  writeFileSync(join(root, file), text);
}

const words = (...more: readonly string[]) => [
  ...["--library", join(root, "content"), "--out", join(root, "dist")],
  ...more,
];
const hash = (...more: readonly string[]) =>
  hashInputs({ root, library: join(root, "content"), argv: words(...more) });
const look = (...more: readonly string[]) => unchanged({ root, argv: words(...more) });

function made(changes: object = {}): void {
  const files = { "index.html": { size: 4, sha256: "" } };
  const manifest = { marker: "trayleaf", inputs: hash(), summary: ["Made 1 card."], files };
  write("dist/.trayleaf.json", JSON.stringify({ ...manifest, ...changes }));
}

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "trayleaf-unchanged-"));
  write("content/publisher.yaml", "name: Example\n");
  write("templates/pages/start.njk", "<p>\n");
  write("lib/index.ts", "export {};\n");
  write(".eleventy.js", "export {};\n");
  write("package-lock.json", "{}\n");
  write(".trayleaf-cache/browser.json", '{"executable":"/b","version":"Chromium 1.0.0.0"}');
  write("dist/index.html", "page");
  made();
});

afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(root, { recursive: true, force: true });
});

test("A build whose inputs and output are as they were gives its summary.", () => {
  expect(look()).toEqual(["Made 1 card."]);
});

const changes: readonly (readonly [string, string, string])[] = [
  ["a definition", "content/publisher.yaml", "name: Another\n"],
  ["a definition added", "content/cautions/new.yaml", "x\n"],
  ["a template", "templates/pages/start.njk", "<b>\n"],
  ["the program", "lib/index.ts", "export const a = 1;\n"],
  ["Eleventy's configuration", ".eleventy.js", "export const a = 1;\n"],
  ["the locked packages", "package-lock.json", '{"a":1}\n'],
  [
    "the browser",
    ".trayleaf-cache/browser.json",
    '{"executable":"/b","version":"Chromium 2.0.0.0"}',
  ],
  ["the size of a made page", "dist/index.html", "longer"],
];

test.each(changes)("After a change to %s it must be built again.", (_, file, text) => {
  write(file, text);
  expect(look()).toBeUndefined();
});

test.each([
  ["a definition", "content/publisher.yaml"],
  ["a made page", "dist/index.html"],
  ["the manifest", "dist/.trayleaf.json"],
  ["the library", "content"],
])("After the loss of %s it must be built again.", (_, file) => {
  rmSync(join(root, file), { recursive: true });
  expect(look()).toBeUndefined();
});

test.each([
  ["another day", ["--today", "2026-11-26"]],
  ["no PDFs", ["--no-pdf"]],
  ["JSON", ["--format", "json"]],
  ["JSON in one word", ["--format=json"]],
])("When %s is asked for it must be built again.", (_, more) => {
  expect(look(...more)).toBeUndefined();
});

test("When SOURCE_DATE_EPOCH is set it must be built again.", () => {
  vi.stubEnv("SOURCE_DATE_EPOCH", "1700000000");
  expect(look()).toBeUndefined();
});

test("A folder that we did not make is not taken for ours.", () => {
  made({ marker: "another" });
  expect(look()).toBeUndefined();
});

test("A torn manifest is not taken for a whole one.", () => {
  write("dist/.trayleaf.json", '{"marker":"tray');
  expect(look()).toBeUndefined();
});

test("The hash does not count where the output goes or how findings are printed.", () => {
  const library = join(root, "content");
  const bare = hashInputs({ root, library, argv: [] });
  expect(hashInputs({ root, library, argv: ["--out", "public", "--format=text"] })).toBe(bare);
  expect(hashInputs({ root, library, argv: ["--no-pdf"] })).not.toBe(bare);
});

test("A file moved whole into another changes the hash.", () => {
  write("content/a.yaml", "one\n");
  write("content/b.yaml", "");
  const before = hash();
  write("content/a.yaml", "");
  write("content/b.yaml", "one\n");
  expect(hash()).not.toBe(before);
});
