import type { Finding } from "../../model/finding.ts";
import type { Rule } from "../../model/rule.ts";
import { isAbout, signs } from "../signed.ts";

const finding: Finding = {
  rule: "case-sheet-expires",
  severity: "sign",
  message: "Expected CASE-A to expire within 7 days of 2026-10-01, got 8 days",
  why: "Trays change between cases.",
  fix: "Set expires to at most 7 days after prepared.",
  place: { file: "cases/case-a.yaml", path: ["expires"] },
};
const signOff = {
  rule: finding.rule,
  found_in: finding.place.file,
  at: "expires",
  finding: finding.message,
  role: "Instrument educator",
  reason: "The trays are on loan for eight days.",
  date: "2026-10-02",
  source: { document: "pebblefin-ifu", section: "Table 1" },
};
const edits = [{ file: "sign-off/loan", path: [], value: signOff }];

/** Every sign-off signs a finding that the rules still make, word for word. */
export const signOffMeetsItsFinding: Rule = {
  id: "sign-off-meets-its-finding",
  severity: "stop",
  about: "sign-off",
  summary: "Every sign-off names a SIGN finding that the rules make now, word for word.",
  why: "A signature holds for what was read when it was given. Left lying, it would sign the next mistake in the same place.",
  fix: "Delete the sign-off, or let the role read the finding as it is now and sign again.",
  source: "common practice",
  *check({ catalogue, findings = [], sheets }) {
    for (const one of catalogue.signOffs.values()) {
      if (findings.some((found) => signs(one, found))) continue;
      const there = findings.find((found) => isAbout(one, found));
      const where = one.at === undefined ? one.found_in : `${one.found_in}, ${one.at}`;
      if (there === undefined && sheets === undefined) continue;
      if (there === undefined)
        yield {
          file: one.file,
          path: ["rule"],
          message: `Nothing to sign: ${one.rule} finds nothing at ${where}`,
        };
      else if (there.severity !== "sign")
        yield {
          file: one.file,
          path: ["rule"],
          message: `Expected a finding to sign at ${where}, got a ${there.severity}: ${there.message}`,
        };
      else
        yield {
          file: one.file,
          path: ["finding"],
          message: `The finding at ${where} has changed. Now: ${there.message}`,
        };
    }
  },
  examples: [
    {
      title: "a finding signed as it is",
      passes: true,
      shows: "Signed: got 8 days. Found: got 8 days.",
      edits,
      findings: [finding],
    },
    {
      title: "a number that changed since",
      passes: false,
      shows: "Signed: got 8 days. Found: got 9 days.",
      edits,
      findings: [{ ...finding, message: finding.message.replace("8 days", "9 days") }],
    },
    {
      title: "a finding that became a stop",
      passes: false,
      shows: "The same words as a STOP: a stop cannot be signed.",
      edits,
      findings: [{ ...finding, severity: "stop" }],
    },
    {
      title: "nothing left to sign",
      passes: false,
      shows: "The case now expires in time, and the signature still lies there.",
      edits,
      findings: [],
      sheets: [],
    },
  ],
};
