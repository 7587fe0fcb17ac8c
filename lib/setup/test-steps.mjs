import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { browserVariables } from "./browser-variables.mjs";
import { installPackages } from "./install-packages.mjs";
import { places } from "./places.mjs";
import { rememberedBrowser } from "./remembered-browser.mjs";
import { runChild } from "./run-child.mjs";
import { staticSteps } from "./static-steps.mjs";

const quick = [
  ...["model", "read", "validate", "resolve", "derive"],
  ...["check", "draw", "compose", "report", "published"],
];

/**
 * Runs the tests and prints their counts as the last line.
 * @param {readonly string[]} words what vitest is told besides: folders, files, options
 * @param {Readonly<Record<string, string>>} variables
 * @param {boolean} before whether the steps before the tests passed
 */
async function tests(words, variables, before) {
  const results = join(places.cache, `tests-${process.pid}.json`);
  mkdirSync(places.cache, { recursive: true });
  const vitest = join(places.root, "node_modules", "vitest", "vitest.mjs");
  const code = await runChild(
    [
      vitest,
      "run",
      "--reporter=default",
      "--reporter=json",
      `--outputFile.json=${results}`,
      ...words,
    ],
    variables,
  );
  const told = existsSync(results) ? JSON.parse(readFileSync(results, "utf8")) : undefined;
  rmSync(results, { force: true });
  const passed = told?.numPassedTests ?? 0;
  const failed = told?.numFailedTests ?? 0;
  if (!before) process.stdout.write("A step before the tests FAILED, see above.\n");
  if (code !== 0 && failed === 0) process.stdout.write("The tests did not run to their end.\n");
  process.stdout.write(`${passed} passed, ${failed} failed\n`);
  return code === 0 && before && passed > 0 ? 0 : 1;
}

/**
 * Types, format, lint, import directions and unused code, then all tests; words name fewer tests.
 * @param {readonly string[]} words
 */
export async function wholeTests(words) {
  installPackages(places.root);
  const variables = browserVariables(await rememberedBrowser());
  const before = await staticSteps();
  return tests(words, variables, before);
}

/**
 * The tests of the stages, which need no browser; generated ones go through a part of their cases.
 * @param {readonly string[]} words
 */
export async function quickTests(words) {
  installPackages(places.root);
  const folders = quick.map((stage) => `tests/${stage}/`);
  return tests([...folders, "--project=shared", ...words], { TRAYLEAF_QUICK: "1" }, true);
}
