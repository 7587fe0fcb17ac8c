import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { rules } from "../../lib/check/rules.ts";
import type { ToldRule } from "../../lib/model/told-rule.ts";
import { readingRules } from "../../lib/read/reading-rules.ts";
import { resolvingRules } from "../../lib/resolve/resolving-rules.ts";
import { validatingRules } from "../../lib/validate/validating-rules.ts";
import { ownFolder, ownLibrary, plant, trayleaf } from "./run-cli.ts";

const slow = 60_000;

describe("the command line ends with the code for what happened", () => {
  test.each<readonly [string, readonly string[], number, string]>([
    ["help", ["--help"], 0, ""],
    ["an unknown command", ["chek"], 2, "Did you mean check?"],
    ["an unknown option", ["check", "--libary", "x"], 2, "Did you mean --library?"],
    ["a day that is none", ["check", "--today", "2026-13-40"], 2, "Expected a date as YYYY-MM-DD"],
    [
      "a folder that is not there",
      ["check", "--library", "nowhere"],
      2,
      'There is no library folder "nowhere".',
    ],
    ["a misspelt rule", ["explain", "key-is-knwon"], 2, 'Did you mean "key-is-known"?'],
    ["a misspelt kind", ["new", "zon", "x"], 2, 'Did you mean "zone"?'],
    [
      "a kind without its system",
      ["new", "zone", "oblong-27", "--library", "nowhere"],
      2,
      "Missing --system",
    ],
    [
      "an id that leads elsewhere",
      ["new", "term", "../x", "--library", "nowhere"],
      2,
      'got "../x"',
    ],
  ])(
    "%s",
    (_, words, code, says) => {
      const ran = trayleaf(words);
      expect(ran.code).toBe(code);
      expect(ran.error).toContain(says);
    },
    slow,
  );
});

test(
  "help teaches by examples and names the exit codes",
  () => {
    const { out } = trayleaf(["--help"]);
    expect(out).toContain("trayleaf explain sleeve-guides-the-drill");
    expect(out).toContain("4 another build is running");
  },
  slow,
);

test.each([
  ["explain", ["--help"]],
  ["check", ["--format", "--help", "--library", "--today"]],
  ["serve", ["--help", "--library", "--today"]],
])(
  "the help of %s names its own options and no other",
  (command, options) => {
    const { out } = trayleaf([command, "--help"]);
    expect([...new Set(out.match(/--[a-z-]+/g))].sort()).toEqual(options);
  },
  slow,
);

test(
  "findings as JSON have counts, places and rules",
  () => {
    const library = ownLibrary();
    plant(library, "glossary/distal.yaml", "means:", "meens:");
    const { code, out } = trayleaf(["check", "--library", library, "--format", "json"]);
    const report = JSON.parse(out);
    expect(code).toBe(1);
    expect(report).toMatchObject({ format: 2, counts: { stop: 1 } });
    expect(
      report.findings.filter((one: { severity: string }) => one.severity === "stop"),
    ).toMatchObject([
      {
        file: "glossary/distal.yaml",
        line: 2,
        column: 1,
        rule: "key-is-known",
        message: 'Unknown key "meens"',
      },
    ]);
  },
  slow,
);

test(
  "a rule is explained with why, fix, source and examples",
  () => {
    const { code, out } = trayleaf(["explain", "sleeve-guides-the-drill"]);
    expect(code).toBe(0);
    for (const word of ["STOP", "what ", "why ", "fix ", "source ", "passes ", "fails "])
      expect(out).toContain(word);
  },
  slow,
);

test(
  "all rules are listed, those of reading, of the schemas and of references among them",
  () => {
    const { code, out } = trayleaf(["explain"]);
    expect(code).toBe(0);
    for (const { id } of [readingRules, validatingRules, resolvingRules, rules].flatMap((stage) =>
      Object.values<ToldRule>(stage),
    ))
      expect(out).toContain(id);
  },
  slow,
);

test(
  "a new definition is written once, with its schema named for editors",
  () => {
    const library = join(ownFolder(), "library");
    const words = [
      "new",
      "instrument",
      "drill-19",
      "--system",
      "minnow",
      "--sort",
      "drill",
      "--library",
      library,
      "--out",
      join(library, "../dist"),
    ];
    expect(trayleaf(words)).toMatchObject({
      code: 2,
      error: expect.stringContaining('Unknown system "minnow". Known: none.'),
    });
    expect(trayleaf(["new", "system", "minnow", "--library", library]).code).toBe(0);
    expect(trayleaf(words).code).toBe(0);
    const text = readFileSync(join(library, "systems/minnow/instruments/drill-19.yaml"), "utf8");
    expect(text.split("\n")[0]).toBe(
      "# yaml-language-server: $schema=../../../../dist/schema/instrument.json",
    );
    expect(trayleaf(words)).toMatchObject({
      code: 2,
      error: expect.stringContaining("exists already"),
    });
  },
  slow,
);
