import { describe, expect, test } from "vitest";
import type { LocatedFinding, Severity } from "../../lib/model/finding.ts";
import { closingLine } from "../../lib/report/closing-line.ts";
import { explainRule } from "../../lib/report/explain-text.ts";
import { jsonSchemas } from "../../lib/report/json-schemas.ts";
import { reportJson } from "../../lib/report/report-json.ts";
import { reportText } from "../../lib/report/report-text.ts";

const finding = (severity: Severity, file: string, line: number): LocatedFinding => ({
  rule: "zone-kind-is-known",
  severity,
  message: 'Unknown zone kind "plain-oblng"',
  why: "Why.",
  fix: "Fix.",
  place: { file, path: ["kind"] },
  line,
  column: 7,
  frame: ["   3 | kind: plain-oblng", "     |       ^^^^^^^^^^^"],
});

test("a finding is printed as what, where, the line, why and fix", () => {
  expect(
    reportText([finding("stop", "zones/a.yaml", 3)], { library: "content", colour: false }),
  ).toBe(`content/zones/a.yaml:3:7  STOP  Unknown zone kind "plain-oblng"  (zone-kind-is-known)
   3 | kind: plain-oblng
     |       ^^^^^^^^^^^
  why  Why.
  fix  Fix.

1 stop. Nothing is published while a stop stands.
`);
});

test("findings stand in the order of file, line and column", () => {
  const out = reportText(
    [finding("note", "b.yaml", 1), finding("note", "a.yaml", 10), finding("note", "a.yaml", 9)],
    { library: "", colour: false },
  );
  expect(out.match(/^[ab]\.yaml:\d+/gm)).toEqual(["a.yaml:9", "a.yaml:10", "b.yaml:1"]);
});

test("colour is used only when it is asked for", () => {
  const code = `${String.fromCharCode(27)}[`;
  expect(reportText([finding("stop", "a.yaml", 1)], { library: "", colour: true })).toContain(code);
  expect(reportText([finding("stop", "a.yaml", 1)], { library: "", colour: false })).not.toContain(
    code,
  );
});

describe("the closing line counts and never promises", () => {
  test.each<readonly [string, readonly Severity[], string]>([
    ["nothing", [], "The rules found nothing; not a clinical approval."],
    ["notes", ["note", "note"], "2 notes; not a clinical approval."],
    [
      "something to sign",
      ["sign", "note"],
      "1 to sign, 1 note. Nothing is published before each is mended or signed.",
    ],
    [
      "stops",
      ["stop", "stop", "note"],
      "2 stops, 1 note. Nothing is published while a stop stands.",
    ],
  ])("%s", (_, severities, line) => {
    expect(closingLine(severities.map((severity) => finding(severity, "a.yaml", 1)))).toBe(line);
  });
});

const toSign: LocatedFinding = {
  ...finding("sign", "cases/a.yaml", 3),
  message: "Expected 7 days, got 8",
};
const signature = {
  file: "sign-offs/loan.yaml",
  role: "Instrument educator",
  reason: "The trays are on loan.",
  date: "2026-10-02",
  source: "Loan sheet, issue 1, line 4",
};

test("a finding to sign is printed with the lines that its sign-off repeats", () => {
  const out = reportText([toSign], { library: "content", colour: false });
  expect(out).toContain("content/cases/a.yaml:3:7  SIGN  Expected 7 days, got 8");
  expect(out).toContain(
    '       rule: zone-kind-is-known\n       found_in: cases/a.yaml\n       at: kind\n       finding: "Expected 7 days, got 8"\n',
  );
});

test("a signed finding is told apart, in text and in JSON, and counted apart", () => {
  const signed = { ...toSign, signed: signature };
  const out = reportText([signed], { library: "content", colour: false });
  expect(out).toContain("  SIGNED  Expected 7 days, got 8");
  expect(out).toContain(
    "  sign Instrument educator, 2026-10-02: The trays are on loan. (Loan sheet, issue 1, line 4; sign-offs/loan.yaml)\n\n1 signed; not a clinical approval.\n",
  );
  const report = JSON.parse(reportJson([signed, toSign], "content"));
  expect(report.counts).toEqual({ stop: 0, sign: 1, signed: 1, note: 0 });
  expect(report.findings.map(({ signed: by }: { signed: unknown }) => by)).toEqual([
    signature,
    null,
  ]);
});

test.each([
  ["stop", false],
  ["sign", true],
  ["note", false],
] as const)("the explanation of a %s rule says how to sign: %s", (severity, says) => {
  const told = { id: "a", severity, about: "words", summary: "S.", why: "W.", fix: "F." } as const;
  const text = explainRule({ ...told, source: "common practice", examples: [] });
  expect(/^sign {5}/m.test(text)).toBe(says);
});

test("the JSON report has a stable shape", () => {
  const report = JSON.parse(reportJson([finding("stop", "a.yaml", 3)], "content"));
  expect(Object.keys(report)).toEqual(["format", "library", "counts", "closing", "findings"]);
  expect(Object.keys(report.findings[0])).toEqual([
    "file",
    "line",
    "column",
    "path",
    "severity",
    "rule",
    "message",
    "why",
    "fix",
    "frame",
    "signed",
  ]);
});

test("an explanation stays within its width", () => {
  const long = "word ".repeat(60).trim();
  const text = explainRule({
    id: "a",
    severity: "stop",
    about: "words",
    summary: long,
    why: long,
    fix: long,
    source: "common practice",
    examples: [{ title: "t", passes: false, shows: long }],
  });
  expect(Math.max(...text.split("\n").map((line) => line.length))).toBeLessThanOrEqual(88);
});

test("each kind of definition, and the report itself, has a JSON Schema with descriptions and no unknown keys", () => {
  const schemas = jsonSchemas();
  expect(schemas.size).toBe(19);
  const screw = JSON.parse(schemas.get("screw.json") ?? "");
  expect(screw).toMatchObject({
    title: "screw",
    type: "object",
    additionalProperties: false,
    properties: {
      major: { minimum: 1, maximum: 8, description: "Outer thread diameter, mm, 1 to 8" },
    },
  });
});

test("hidden characters of a file never reach the terminal", () => {
  const hostile = {
    ...finding("stop", "a\u001B[2J.yaml", 1),
    message: "x\u202Ey",
    frame: ["   1 | \u0007\tb"],
  };
  const out = reportText([hostile], { library: "", colour: false });
  expect(out.replaceAll("\n", "")).not.toMatch(/[\p{Cc}\p{Cf}]/u);
  expect(out).toContain("a\uFFFD[2J.yaml:1:7  STOP  x\uFFFDy");
  expect(out).toContain("   1 | \uFFFD\u2192b");
});
