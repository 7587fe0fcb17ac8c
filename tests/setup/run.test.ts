import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const setup = fileURLToPath(new URL("../../lib/setup/", import.meta.url));

function runs(program: string, words: readonly string[], env: Record<string, string> = {}) {
  return spawnSync(process.execPath, [`${setup}${program}`, ...words], {
    env: { ...process.env, TRAYLEAF_SKIP_INSTALL: "1", ...env },
    encoding: "utf8",
    timeout: 60_000,
  });
}

test("npm start with a named browser that is none stops with exit 3 and one line.", () => {
  const ended = runs("run.mjs", ["start"], { PUPPETEER_EXECUTABLE_PATH: "/nowhere/browser" });
  expect(ended.status).toBe(3);
  expect(ended.stderr).toMatch(/^PUPPETEER_EXECUTABLE_PATH names \/nowhere\/browser.*\n$/);
  expect(ended.stdout).toBe("");
});

test("An unknown task is wrong use.", () => {
  const ended = runs("run.mjs", ["tidy"]);
  expect(ended.status).toBe(2);
  expect(ended.stderr).toContain("start, mutate, bench, serve, test, test-quick");
});

test("The launcher needs no browser to explain, and passes on the exit code.", () => {
  const nowhere = { PUPPETEER_EXECUTABLE_PATH: "/nowhere/browser" };
  expect(runs("trayleaf.mjs", ["explain", "sleeve-guides-the-drill"], nowhere).status).toBe(0);
  expect(runs("trayleaf.mjs", ["explain", "no-such-rule"], nowhere).status).toBe(2);
});
