import type { Rule } from "../../model/rule.ts";
import { isOver } from "../../model/site.ts";

const days = (from: string, to: string): number =>
  Math.round((Date.parse(to) - Date.parse(from)) / 86_400_000);

/** A case sheet expires within seven days of being prepared. */
export const caseSheetExpires: Rule = {
  id: "case-sheet-expires",
  severity: "sign",
  about: "case",
  summary: "A case sheet expires no later than 7 days after it was prepared.",
  why: "Trays change between cases: a sheet that outlives its case sends someone to an empty slot.",
  fix: "Set expires to at most 7 days after prepared.",
  source: "common practice",
  *check({ catalogue, today }) {
    for (const { file, prepared, expires, code } of catalogue.cases.values()) {
      const kept = days(prepared, expires);
      if (kept < 0)
        yield {
          file,
          path: ["expires"],
          message: `Expected ${code} to expire after it was prepared on ${prepared}, got ${expires}`,
        };
      else if (kept > 7)
        yield {
          file,
          path: ["expires"],
          message: `Expected ${code} to expire within 7 days of ${prepared}, got ${kept} days`,
        };
      else if (isOver({ expires }, today))
        yield {
          file,
          path: ["expires"],
          severity: "note",
          message: `${code} expired on ${expires}`,
          fix: "Prepare it anew for a new case, or delete it.",
        };
    }
  },
  examples: [
    {
      title: "seven days",
      passes: true,
      shows: "Prepared on the 1st, expires on the 8th.",
      today: "2026-10-02",
      edits: [
        { file: "case/case-a", path: ["prepared"], value: "2026-10-01" },
        { file: "case/case-a", path: ["expires"], value: "2026-10-08" },
      ],
    },
    {
      title: "eight days",
      passes: false,
      shows: "Prepared on the 1st, expires on the 9th.",
      today: "2026-10-02",
      edits: [
        { file: "case/case-a", path: ["prepared"], value: "2026-10-01" },
        { file: "case/case-a", path: ["expires"], value: "2026-10-09" },
      ],
    },
    {
      title: "expired before it was prepared",
      passes: false,
      shows: "Prepared on the 2nd, expires on the 1st.",
      today: "2026-10-01",
      edits: [
        { file: "case/case-a", path: ["prepared"], value: "2026-10-02" },
        { file: "case/case-a", path: ["expires"], value: "2026-10-01" },
      ],
    },
    {
      title: "a case of last week",
      passes: false,
      shows: "Expired on the 8th, built on the 9th: told, nothing more.",
      today: "2026-10-09",
      edits: [
        { file: "case/case-a", path: ["prepared"], value: "2026-10-01" },
        { file: "case/case-a", path: ["expires"], value: "2026-10-08" },
      ],
    },
    {
      title: "the last day",
      passes: true,
      shows: "Expires on the 8th, built on the 8th.",
      today: "2026-10-08",
      edits: [
        { file: "case/case-a", path: ["prepared"], value: "2026-10-01" },
        { file: "case/case-a", path: ["expires"], value: "2026-10-08" },
      ],
    },
  ],
};
