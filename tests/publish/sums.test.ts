import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { sha256, writeManifest } from "../../lib/publish/manifest.ts";
import { ownFolder } from "../cli/run-cli.ts";

const checker = "sha256sum";
const able = spawnSync(checker, ["--version"]).status === 0;

function written(): string {
  const folder = ownFolder();
  mkdirSync(join(folder, "pdf"));
  writeFileSync(join(folder, "index.html"), "<p>one</p>");
  writeFileSync(join(folder, "pdf", "a card.pdf"), "two");
  writeManifest(folder, { inputs: "", summary: [], prints: {} });
  return folder;
}

describe("the sums beside the files", () => {
  test("name every file with its SHA-256", () => {
    expect(readFileSync(join(written(), "SHA256SUMS"), "utf8")).toBe(
      `${sha256("<p>one</p>")}  index.html\n${sha256("two")}  pdf/a card.pdf\n`,
    );
  });

  test.runIf(able)("are accepted by sha256sum -c, and betray a changed file", () => {
    const folder = written();
    const check = () => spawnSync(checker, ["-c", "SHA256SUMS"], { cwd: folder, encoding: "utf8" });
    expect(check().status).toBe(0);
    writeFileSync(join(folder, "pdf", "a card.pdf"), "Two");
    const { status, stdout } = check();
    expect(status).toBe(1);
    expect(stdout).toContain("pdf/a card.pdf: FAILED");
  });
});
