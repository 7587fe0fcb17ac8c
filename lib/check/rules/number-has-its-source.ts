import { definitionsOf } from "../../model/find-definition.ts";
import type { Rule } from "../../model/rule.ts";
import { sourceAt } from "../../model/source-at.ts";
import { sampleSteps } from "../sample-sheets.ts";
import { sampleTrace } from "../sample-trace.ts";

/** Kinds that are sources themselves, or hold words and no number of a part. */
const needNone = new Set(["document", "term", "sign-off"]);

/** Every number on a card can be followed to a document, a section and an issue. */
export const numberHasItsSource: Rule = {
  id: "number-has-its-source",
  severity: "stop",
  about: "sheet",
  summary:
    "Every definition that a card is made from names the document and section its numbers come from, and every number on the card is said by a definition.",
  why: "A number that nobody can look up is a number that nobody has checked. When its document changes, the card that shows it is not found.",
  fix: "Add source with document and section; for a field that comes from elsewhere, source, fields.",
  source: "common practice",
  *check({ catalogue, traces, sheets = [] }) {
    for (const { sheet, card, uses, untold } of traces?.values() ?? []) {
      for (const { kind, id, file, path } of uses) {
        const definition = definitionsOf(catalogue, kind).get(id);
        if (needNone.has(kind) || definition === undefined || sourceAt(definition, path)) continue;
        const what = path.length > 0 ? `${id}, ${path.join(".")}` : id;
        yield { file, path, message: `Missing source of ${what}: the card ${card} rests on it` };
      }
      const file = sheets.find(({ id }) => id === sheet)?.origin;
      if (file !== undefined)
        for (const text of untold)
          yield {
            file,
            path: [],
            severity: "note",
            message: `No definition says "${text}" on the card ${card}`,
          };
    }
  },
  examples: [
    {
      title: "a drill with its source",
      passes: true,
      shows: "Drill 2.7 on one card: instructions for use, Table 1.",
      edits: [],
      traces: [sampleTrace({ uses: [["instrument", "drill-27-pilot"]] })],
    },
    {
      title: "a drill without a source",
      passes: false,
      shows: "Drill 2.7 on one card, its source taken away: one finding that names the card.",
      edits: [{ file: "instrument/drill-27-pilot", path: ["source"], value: undefined }],
      traces: [sampleTrace({ uses: [["instrument", "drill-27-pilot"]] })],
    },
    {
      title: "a length policy without a source",
      passes: false,
      shows: "The system has its source, its length policy for locking screws has none.",
      edits: [
        {
          file: "system/pebblefin",
          path: ["length_policy"],
          value: { locking: { add: 0, overshoot_below: 2, datum: "screw-length" } },
        },
      ],
      traces: [sampleTrace({ uses: [["system", "pebblefin", ["length_policy", "locking"]]] })],
    },
    {
      title: "a number that no definition says",
      passes: false,
      shows:
        'A card prints "drill 9.9", and no part of the library is called so: told, nothing more.',
      edits: [],
      sheets: [sampleSteps()],
      traces: [sampleTrace({ untold: ["drill 9.9"] })],
    },
  ],
};
