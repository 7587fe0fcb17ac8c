import type { Rule } from "../../model/rule.ts";
import { citations } from "../citations.ts";
import { fails, passes } from "../example.ts";

const contents = { "document/pebblefin-ifu sections": ["Table 1", "Table 2"] };

/** A cited section is one that its document has; two may be cited together, joined by "and". */
export const citedSectionIsThere: Rule = {
  id: "cited-section-is-there",
  severity: "stop",
  about: "sheet",
  summary:
    "Where a document lists its sections, every citation of it names one of them, or several joined by and.",
  why: "A reviewer who follows a number to a section that does not exist cannot check it; most often the wrong document was named.",
  fix: "Correct document or section, or add the section to the document's list once it has been seen there.",
  source: "common practice",
  *check({ catalogue }) {
    for (const { file, path, citation } of citations(catalogue)) {
      const document = catalogue.documents.get(citation.document);
      const { title, issue, sections } = document ?? {};
      if (sections === undefined || sections.includes(citation.section)) continue;
      const parts = citation.section.split(" and ");
      if (parts.every((part) => sections.includes(part))) continue;
      yield {
        file,
        path: [...path, "section"],
        message: `Expected a section of ${title}, issue ${issue}, got "${citation.section}"`,
      };
    }
  },
  examples: [
    passes("a section that is there", "Table 1, and the document lists Tables 1 and 2.", contents),
    passes("two sections", "Table 1 and Table 2 are cited together.", {
      ...contents,
      "screw/locking-35 source.section": "Table 1 and Table 2",
    }),
    passes("no list", "The document does not list its sections."),
    fails("a section that is not", "Table 3, and the document lists Tables 1 and 2.", {
      ...contents,
      "screw/locking-35 source.section": "Table 3",
    }),
    fails("a field's own citation", "The pitch is cited to Table 3.", {
      ...contents,
      "screw/locking-35 source.fields": {
        pitch: { document: "pebblefin-ifu", section: "Table 3" },
      },
    }),
  ],
};
