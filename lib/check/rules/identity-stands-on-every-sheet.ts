import type { Rule } from "../../model/rule.ts";
import { sampleSteps } from "../sample-sheets.ts";

/** What the front of a card with two faces may leave to its back. */
const onTheBack = new Set(["date", "trayRevision", "reviewBy", "distance", "sources"]);

/** Every sheet says what it is, which issue, from when, for which tray, until when, in which language, and whom to ask. */
export const identityStandsOnEverySheet: Rule = {
  id: "identity-stands-on-every-sheet",
  severity: "stop",
  about: "sheet",
  summary:
    "Every sheet carries card id, issue, date, tray revision, review date, page, language, fingerprint, sources and whom to ask.",
  why: "A laminated card stays on the wall for years. Without its issue nobody can tell that it is the old one.",
  fix: "State issue, dates and documents in the system's file, and the contact in publisher.yaml.",
  source: "document control as in ISO 13485, by secondary summaries",
  *check({ sheets = [] }) {
    for (const sheet of sheets) {
      const { id, origin, identity, ask, generation } = sheet;
      const front = sheet.kind === "pocket" && sheet.face === "front";
      const missing = Object.entries({ ...identity, ask, generation }).flatMap(([field, text]) =>
        text.trim() === "" && !(front && onTheBack.has(field)) ? field : [],
      );
      if (missing.length > 0)
        yield { file: origin, path: [], message: `Missing on ${id}: ${missing.join(", ")}` };
    }
  },
  examples: [
    {
      title: "a sheet that says what it is",
      passes: true,
      shows: "PF-SAMPLE, issue C, 2026-10-01, tray revision 4, page 1 of 1, en.",
      edits: [],
      sheets: [sampleSteps()],
    },
    {
      title: "a sheet without an issue",
      passes: false,
      shows: "PF-SAMPLE, no issue.",
      edits: [],
      sheets: [sampleSteps({ identity: { ...sampleSteps().identity, issue: "" } })],
    },
  ],
};
