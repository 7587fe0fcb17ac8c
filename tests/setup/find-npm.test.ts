import { mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { findNpm } from "../../lib/setup/find-npm.mjs";

let folder = "";

beforeEach(() => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), "trayleaf-npm-")));
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

function file(...path: readonly string[]): string {
  const whole = join(folder, ...path);
  mkdirSync(dirname(whole), { recursive: true });
  writeFileSync(whole, "");
  return whole;
}

const node = () => join(folder, "node", "bin", "node");

test("The npm that started us is taken.", () => {
  const started = file("started", "npm-cli.js");
  file("node", "lib", "node_modules", "npm", "bin", "npm-cli.js");
  expect(findNpm({ npm_execpath: started }, node())).toBe(started);
});

test("Another package manager that started us is not taken for npm.", () => {
  const beside = file("node", "lib", "node_modules", "npm", "bin", "npm-cli.js");
  expect(findNpm({ npm_execpath: file("other", "yarn.js") }, node())).toBe(beside);
});

test("Without an npm beside Node, the one behind the link in PATH is taken.", () => {
  const real = file("share", "npm-cli.js");
  mkdirSync(join(folder, "bin"));
  symlinkSync(real, join(folder, "bin", "npm"));
  expect(findNpm({ PATH: `${join(folder, "absent")}:${join(folder, "bin")}` }, node())).toBe(real);
});

test("With no npm at all it says so.", () => {
  expect(() => findNpm({ PATH: "" }, node())).toThrow("npm was not found");
});
