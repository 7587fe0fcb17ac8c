import { chmodSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { launchFlags } from "../../lib/setup/launch-flags.mjs";

const page = String.raw`printf '{"id":1,"result":{"targetId":"t"}}\0{"id":2,"result":{"sessionId":"s"}}\0{"id":3,"result":{"result":{"value":42}}}\0' >&4`;
let folder = "";

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "trayleaf-flags-"));
});

afterEach(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true, force: true });
});

const cases = [
  ["a user whose system offers a sandbox", page, false, []],
  ["root", page, true, ["--no-sandbox"]],
  [
    "a user whose system offers none",
    `case "$*" in *--no-sandbox*) ${page};; *) exit 1;; esac`,
    false,
    ["--no-sandbox"],
  ],
  ["a user whose browser opens no page at all", "exit 1", false, undefined],
  ["root whose browser opens no page at all", "exit 1", true, undefined],
] as const;

test.each(cases)(
  "The flags for %s are decided by opening a page.",
  async (_, body, asRoot, flags) => {
    const notice = vi.spyOn(process.stderr, "write").mockImplementation(() => true);
    const executable = join(folder, "browser");
    writeFileSync(executable, `#!/bin/sh\n${body}\n`);
    chmodSync(executable, 0o755);
    expect(await launchFlags(executable, {}, asRoot)).toEqual(flags);
    expect(notice).toHaveBeenCalledTimes(!asRoot && flags?.length === 1 ? 1 : 0);
  },
);
