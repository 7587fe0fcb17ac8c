import { chmodSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { opensPage } from "../../lib/setup/opens-page.mjs";

let folder = "";

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "trayleaf-opens-"));
  vi.stubEnv("TMPDIR", folder);
});

afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true, force: true });
});

const replies = (value: number) =>
  String.raw`printf '{"id":1,"result":{"targetId":"t"}}\0{"id":2,"result":{"sessionId":"s"}}\0{"id":3,"result":{"result":{"value":${value}}}}\0' >&4`;

const cases = [
  ["answers rightly", replies(42), true],
  ["answers rightly and lives on", `${replies(42)}; sleep 60`, true],
  ["reckons wrongly", replies(41), false],
  ["answers nothing and ends", "exit 0", false],
  [
    "refuses to open a page and lives on",
    String.raw`printf '{"id":1,"error":{"code":-32000}}\0' >&4; sleep 60`,
    false,
  ],
] as const;

test.each(cases)(
  "Of a browser that %s it is told so, and no profile stays behind.",
  async (_, body, opened) => {
    const executable = join(folder, "browser");
    writeFileSync(executable, `#!/bin/sh\n${body}\n`);
    chmodSync(executable, 0o755);
    expect(await opensPage(executable, [], {})).toBe(opened);
    expect(readdirSync(folder)).toEqual(["browser"]);
  },
);

test("A file that is not there opens no page.", async () => {
  expect(await opensPage(join(folder, "absent"), [], {})).toBe(false);
});

test.runIf(process.env["PUPPETEER_EXECUTABLE_PATH"])(
  "The browser at hand opens a page.",
  async () => {
    const flags = (process.env["TRAYLEAF_BROWSER_ARGS"] ?? "").split(" ").filter(Boolean);
    const executable = process.env["PUPPETEER_EXECUTABLE_PATH"] ?? "";
    expect(await opensPage(executable, flags, {})).toBe(true);
  },
);
