import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { expect, test } from "vitest";
import { smallLibrary } from "../fixtures/small-library.ts";
import { ownFolder } from "./run-cli.ts";

test("A build that has nothing to do tells the findings and what was made, as the one before it did.", () => {
  const home = ownFolder();
  const [library, out] = [join(home, "library"), join(home, "site")];
  smallLibrary(library);
  const words = ["build", "--no-pdf", "--library", library, "--out", out, "--today", "2026-10-02"];
  const built = (): string =>
    spawnSync(process.execPath, ["lib/setup/trayleaf.mjs", ...words], {
      encoding: "utf8",
      env: { ...process.env, NO_COLOR: "1" },
    }).stdout;
  const [first, second] = [built(), built()];
  const toldOf = (text: string): string => text.slice(0, text.indexOf(`Open ${out}`));
  expect(toldOf(first)).toMatch(/ {2}NOTE {2}.*\n[\s\S]*not a clinical approval/);
  expect(toldOf(second)).toBe(toldOf(first));
  expect(second.endsWith("Nothing changed.\n")).toBe(true);
}, 120_000);
