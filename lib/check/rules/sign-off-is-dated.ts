import type { Rule } from "../../model/rule.ts";

const signOff = {
  rule: "case-sheet-expires",
  found_in: "cases/case-a.yaml",
  at: "expires",
  finding: "Expected CASE-A to expire within 7 days of 2026-10-01, got 8 days",
  role: "Instrument educator",
  reason: "The trays are on loan for eight days.",
  date: "2026-10-02",
  source: { document: "pebblefin-ifu", section: "Table 1" },
};

/** A signature is dated no later than the day of the build and no earlier than the issue of the document that was read. */
export const signOffIsDated: Rule = {
  id: "sign-off-is-dated",
  severity: "stop",
  about: "sign-off",
  summary:
    "A sign-off is dated from the issue of the document it cites to the day of the build, both included.",
  why: "Nobody has signed tomorrow, and nobody has read a document before it was issued: a new issue asks for a new signature.",
  fix: "Correct the date or, when a new issue of the document is there, let the role read it and sign again.",
  source: "common practice",
  needsAll: ["system"],
  *check({ catalogue, today }) {
    for (const { file, date, source } of catalogue.signOffs.values()) {
      const read = catalogue.documents.get(source.document);
      if (date > today)
        yield {
          file,
          path: ["date"],
          message: `Expected a signature no later than ${today}, the day of this build, got ${date}`,
        };
      else if (read !== undefined && date < read.date)
        yield {
          file,
          path: ["date"],
          message: `Expected a signature no earlier than ${read.date}, when ${read.title} was issued, got ${date}`,
        };
    }
  },
  examples: [
    {
      title: "signed on the day of the build",
      passes: true,
      shows: "Signed on 2 October, built on 2 October.",
      today: "2026-10-02",
      edits: [{ file: "sign-off/loan", path: [], value: signOff }],
    },
    {
      title: "signed tomorrow",
      passes: false,
      shows: "Signed on 3 October, built on 2 October.",
      today: "2026-10-02",
      edits: [{ file: "sign-off/loan", path: [], value: { ...signOff, date: "2026-10-03" } }],
    },
    {
      title: "signed on the day of the document's issue",
      passes: true,
      shows: "The instructions for use were issued on 14 August and signed for on 14 August.",
      today: "2026-10-02",
      edits: [
        { file: "document/pebblefin-ifu", path: ["date"], value: "2026-08-14" },
        { file: "sign-off/loan", path: [], value: { ...signOff, date: "2026-08-14" } },
      ],
    },
    {
      title: "signed before the document was issued",
      passes: false,
      shows:
        "The instructions for use were issued anew on 14 August; the signature is of 13 August.",
      today: "2026-10-02",
      edits: [
        { file: "document/pebblefin-ifu", path: ["date"], value: "2026-08-14" },
        { file: "sign-off/loan", path: [], value: { ...signOff, date: "2026-08-13" } },
      ],
    },
  ],
};
