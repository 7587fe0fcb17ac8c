import type { Rule } from "../../model/rule.ts";
import { sampleSteps } from "../sample-sheets.ts";

const duties = ["surgeon", "instructions for use", "local protocol"] as const;
const unsaid = (text: string): readonly string[] =>
  duties.filter((word) => !text.toLowerCase().includes(word));

/** Every sheet says that the surgeon decides and that instructions for use and local protocol come first. */
export const sheetDefers: Rule = {
  id: "sheet-defers",
  severity: "stop",
  about: "sheet",
  summary:
    "Every sheet says that the surgeon decides, and that instructions for use and local protocol prevail.",
  why: "A card must never be held up against a surgeon or against the instructions it was made from.",
  fix: "Let the line defer in publisher.yaml name the surgeon, the instructions for use and the local protocol.",
  source: "common practice",
  *check({ catalogue, sheets = [] }) {
    const { file, defer } = catalogue.publisher;
    const absent = unsaid(defer);
    if (absent.length > 0)
      yield {
        file,
        path: ["defer"],
        message: `Missing in the line that defers: ${absent.join(", ")}`,
      };
    for (const sheet of sheets) {
      const gone = unsaid(sheet.defer);
      if (gone.length > 0)
        yield {
          file: sheet.origin,
          path: [],
          message: `Missing in the line that defers on ${sheet.id}: ${gone.join(", ")}`,
        };
    }
  },
  examples: [
    {
      title: "all three named",
      passes: true,
      shows: "The surgeon decides. Instructions for use and local protocol prevail.",
      edits: [],
      sheets: [sampleSteps()],
    },
    {
      title: "a line without the surgeon",
      passes: false,
      shows: "Follow this card.",
      edits: [{ file: "publisher/publisher", path: ["defer"], value: "Follow this card." }],
    },
    {
      title: "a sheet without the line",
      passes: false,
      shows: "A sheet that defers to nobody.",
      edits: [],
      sheets: [sampleSteps({ defer: "" })],
    },
  ],
};
