import type { Rule } from "../../model/rule.ts";

const signs: readonly (readonly [RegExp, string])[] = [
  [/\b[A-Z]\.\s?[A-Z]\./, "initials"],
  [/\b(Mr|Mrs|Ms|Miss|Dr|Prof)\b\.?\s+[A-Z]/, "a title with a name"],
  [/\b[A-Z][a-z]+,\s*[A-Z]\b\.?/, "a surname with an initial"],
  [/\b[A-Z]\.\s?[A-Z][a-z]{2,}/, "an initial with a surname"],
  [/\b\d{1,4}[./-]\d{1,2}[./-]\d{1,4}\b/, "a date"],
  [
    /\b\d{1,2}\.?\s+(January|February|March|April|May|June|July|August|September|October|November|December)\s+\d{4}\b/i,
    "a date",
  ],
  [/\b(aged?\s+\d{1,3}|\d{1,3}[- ]years?[- ]old)\b/i, "an age"],
  [/\d(?:[ -]?\d){5,}/, "a long number"],
];

const sign = (text: string, declared: readonly string[]): string | undefined => {
  const plain = declared.reduce((rest, day) => rest.replaceAll(day, ""), text);
  return signs.find(([pattern]) => pattern.test(plain))?.[1];
};

/** A case file holds holes and screws, and nothing that points at a person. */
export const caseNamesNoPerson: Rule = {
  id: "case-names-no-person",
  severity: "stop",
  about: "case",
  summary:
    "The free text of a case or a site holds no initials, names with titles, dates of birth, ages or long numbers.",
  why: "The sheet lies about in theatre and is thrown away; nothing on it may tell whose case it was.",
  fix: "Take it out. The case code is enough.",
  source: "common practice",
  *check({ catalogue }) {
    for (const { file, name, note, prepared, expires } of catalogue.cases.values()) {
      for (const [field, text] of Object.entries({ name, note })) {
        const found = text === undefined ? undefined : sign(text, [prepared, expires]);
        if (found !== undefined)
          yield {
            file,
            path: [field],
            message: `Expected nothing that points at a person, got what looks like ${found}`,
          };
      }
    }
    for (const { file, trays } of catalogue.sites.values()) {
      for (const [index, { checked }] of trays.entries()) {
        const found = sign(checked.role, []);
        if (found !== undefined)
          yield {
            file,
            path: ["trays", index, "checked", "role"],
            message: `Expected a role, got what looks like ${found}`,
          };
      }
    }
  },
  examples: [
    {
      title: "a case told by its plate",
      passes: true,
      shows: "Lower fibula, five holes.",
      edits: [{ file: "case/case-a", path: ["name"], value: "Lower fibula, five holes" }],
    },
    {
      title: "initials and a date",
      passes: false,
      shows: "J.S. 04/07/61.",
      edits: [{ file: "case/case-a", path: ["note"], value: "J.S. 04/07/61" }],
    },
    {
      title: "a long number",
      passes: false,
      shows: "Record 943 476 5919.",
      edits: [{ file: "case/case-a", path: ["note"], value: "Record 943 476 5919." }],
    },
    {
      title: "five digits",
      passes: true,
      shows: "Shelf 12345 is a place, not a person.",
      edits: [{ file: "case/case-a", path: ["note"], value: "Fetch from shelf 12345." }],
    },
    {
      title: "six digits",
      passes: false,
      shows: "Number 123456 may be a record.",
      edits: [{ file: "case/case-a", path: ["note"], value: "Number 123456." }],
    },
    {
      title: "the days of the case itself",
      passes: true,
      shows: "Prepared 2026-10-01, as the file states anyway.",
      edits: [{ file: "case/case-a", path: ["note"], value: "Prepared 2026-10-01." }],
    },
    {
      title: "an age",
      passes: false,
      shows: "Aged 72.",
      edits: [{ file: "case/case-a", path: ["note"], value: "Thin bone, aged 72." }],
    },
    {
      title: "a title with a name",
      passes: false,
      shows: "Dr Example.",
      edits: [{ file: "case/case-a", path: ["note"], value: "As Dr Example asks." }],
    },
  ],
};
