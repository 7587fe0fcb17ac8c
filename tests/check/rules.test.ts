import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { check } from "../../lib/check/check.ts";
import { rules } from "../../lib/check/rules.ts";
import { derive } from "../../lib/derive/derive.ts";
import type { Finding } from "../../lib/model/finding.ts";
import type { Rule, RuleExample } from "../../lib/model/rule.ts";
import { editedLibrary } from "./edited-library.ts";

function said(
  rule: Rule,
  { edits, sheets, fits, findings, traces, today = "2026-10-02" }: RuleExample,
): Finding[] {
  const catalogue = editedLibrary(edits);
  return check(
    {
      catalogue,
      derived: derive(catalogue),
      today,
      ...(sheets ? { sheets } : {}),
      ...(fits ? { fits } : {}),
      ...(findings ? { findings } : {}),
      ...(traces ? { traces: new Map(traces.map((trace) => [trace.sheet, trace])) } : {}),
    },
    [rule],
  );
}

const files = readdirSync(new URL("../../lib/check/rules/", import.meta.url)).map((file) =>
  file.replace(/\.ts$/, ""),
);

it("lists every rule file, and nothing else, in the order of their names", () => {
  expect(rules.map(({ id }) => id)).toEqual(files.sort());
});

it("finds nothing in the reference library", () => {
  const catalogue = editedLibrary([]);
  expect(
    check({ catalogue, derived: derive(catalogue), today: "2026-10-02" }).map(
      ({ rule, message }) => `${rule}: ${message}`,
    ),
  ).toEqual([]);
});

describe.each(rules)("$id", (rule) => {
  it("says what, why, what to do and where it comes from, in sentences", () => {
    for (const text of [rule.summary, rule.why, rule.fix]) expect(text).toMatch(/^[A-Z].*\.$/);
    expect(rule.source).not.toBe("");
  });

  it("has an example that passes and one that fails", () => {
    expect(new Set(rule.examples.map(({ passes }) => passes))).toEqual(new Set([true, false]));
    expect(new Set(rule.examples.map(({ title }) => title)).size).toBe(rule.examples.length);
  });

  it.each(rule.examples)("$title: passes $passes", (example) => {
    const findings = said(rule, example);
    if (example.passes) expect(findings).toEqual([]);
    else expect(findings).not.toEqual([]);
    for (const { place, message } of findings) {
      expect(place.file).not.toBe("");
      expect(message).not.toMatch(/undefined|NaN|\[object/);
    }
  });
});
