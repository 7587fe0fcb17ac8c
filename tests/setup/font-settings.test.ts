import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { fontSettings } from "../../lib/setup/font-settings.mjs";

let folder = "";

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "trayleaf-fonts-"));
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

test("A system with a font configuration keeps it.", () => {
  const system = join(folder, "fonts.conf");
  writeFileSync(system, "");
  expect(fontSettings({ root: folder, cache: folder, system })).toEqual({});
});

test.runIf(process.platform === "linux")(
  "A system without one gets a small one with our own fonts.",
  () => {
    const system = join(folder, "absent.conf");
    const settings = fontSettings({ root: "/project", cache: folder, system });
    expect(Object.keys(settings)).toEqual(["FONTCONFIG_FILE"]);
    const text = readFileSync(settings["FONTCONFIG_FILE"] ?? "", "utf8");
    expect(text).toContain("<dir>/project/node_modules/@fontsource</dir>");
  },
);
