import { expect, it } from "vitest";
import { z } from "zod";
import { checkLibrary } from "../../lib/index.ts";
import { CheckReport } from "../../lib/model/report.ts";
import { jsonSchemas } from "../../lib/report/json-schemas.ts";
import { reportJson } from "../../lib/report/report-json.ts";

/** A validator built from the published JSON Schema alone. */
const published = z.fromJSONSchema(JSON.parse(jsonSchemas().get("check-report.json") ?? ""));

function reported(library: string): unknown {
  const { locate, findings } = checkLibrary(library, "2026-11-25");
  return JSON.parse(reportJson(findings.map(locate), library));
}

const own = reported("content");

it.each([
  ["content", own],
  ["tests/broken", reported("tests/broken")],
])("the report on %s has the published shape", (_, report) => {
  expect(published.safeParse(report).error).toBeUndefined();
  expect(CheckReport.parse(report).findings.length).toBeGreaterThan(0);
});

it.each([
  ["another format", { format: 1 }],
  ["no findings", { findings: undefined }],
  ["a key nobody knows", { more: true }],
  ["a severity nobody knows", { findings: [{ severity: "warning" }] }],
])("refuses a report with %s", (_, more) => {
  const report = { ...(own as object), ...more };
  expect(published.safeParse(JSON.parse(JSON.stringify(report))).success).toBe(false);
});

it("says in the schema what every field of a finding is", () => {
  const schema = JSON.parse(jsonSchemas().get("check-report.json") ?? "");
  const { required, additionalProperties } = schema.properties.findings.items;
  expect(additionalProperties).toBe(false);
  expect(required).toEqual([
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
