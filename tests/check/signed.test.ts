import { describe, expect, it } from "vitest";
import { check } from "../../lib/check/check.ts";
import { derive } from "../../lib/derive/derive.ts";
import { type Finding, refuses } from "../../lib/model/finding.ts";
import type { Edit } from "../fixtures/catalogue-of.ts";
import { editedLibrary } from "./edited-library.ts";

const late: Edit = { file: "case/case-a", path: ["expires"], value: "2026-10-09" };
const signOff = {
  rule: "case-sheet-expires",
  found_in: "cases/case-a.yaml",
  at: "expires",
  finding: "Expected CASE-A to expire within 7 days of 2026-10-01, got 8 days",
  role: "Instrument educator",
  reason: "The trays are on loan for eight days.",
  date: "2026-10-01",
  source: { document: "pebblefin-ifu", section: "Table 1" },
};
const signing = (change: Partial<typeof signOff> = {}): Edit => ({
  file: "sign-off/loan",
  path: [],
  value: { ...signOff, ...change },
});

function judged(...edits: readonly Edit[]): Finding[] {
  const catalogue = editedLibrary(edits);
  return check({ catalogue, derived: derive(catalogue), today: "2026-10-02", sheets: [] });
}
const told = (findings: readonly Finding[]) =>
  findings.map((finding) => [finding.rule, refuses(finding)]);

describe("a finding to sign", () => {
  it("refuses publishing while nobody has signed it", () => {
    expect(told(judged(late))).toEqual([["case-sheet-expires", true]]);
  });

  it("is published with the signature of a role, and says who read what", () => {
    const [finding, ...more] = judged(late, signing());
    expect(more).toEqual([]);
    expect(finding && refuses(finding)).toBe(false);
    expect(finding?.signed).toEqual({
      file: "sign-offs/loan.yaml",
      role: "Instrument educator",
      reason: "The trays are on loan for eight days.",
      date: "2026-10-01",
      source: "Pebblefin instructions for use, issue C, Table 1",
    });
  });

  it.each([
    ["another rule", { rule: "pilot-suits-the-core" }],
    ["another file", { found_in: "cases/case-b.yaml" }],
    ["other keys", { at: "prepared" }],
    ["another number", { finding: signOff.finding.replace("8 days", "9 days") }],
  ])(
    "is not signed by a sign-off that names %s, and that sign-off is found itself",
    (_, change) => {
      expect(told(judged(late, signing(change)))).toEqual([
        ["case-sheet-expires", true],
        ["sign-off-meets-its-finding", true],
      ]);
    },
  );

  it("is signed anew when its number changes", () => {
    const later = { ...late, value: "2026-10-10" };
    expect(told(judged(later, signing()))).toEqual([
      ["case-sheet-expires", true],
      ["sign-off-meets-its-finding", true],
    ]);
  });

  it("is not signed out of an unknown document", () => {
    const source = { document: "nowhere", section: "1" };
    expect(told(judged(late, signing({ source })))).toContainEqual(["case-sheet-expires", true]);
  });
});

it("a sign-off with nothing left to sign is a finding", () => {
  expect(told(judged(signing()))).toEqual([["sign-off-meets-its-finding", true]]);
});

it("a stop is not signed", () => {
  const short: Edit = { file: "instrument/drill-27-pilot", path: ["reach"], value: 20 };
  const [stop] = judged(short);
  if (stop === undefined) throw new Error("A short drill is not found");
  const { rule, place, message } = stop;
  const named = { rule, found_in: place.file, at: place.path.join("."), finding: message };
  expect(stop.severity).toBe("stop");
  expect(judged(short, signing(named)).find((one) => one.rule === rule)?.signed).toBeUndefined();
});
