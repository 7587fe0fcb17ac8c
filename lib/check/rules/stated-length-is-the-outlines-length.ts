import { known } from "../../model/catalogue.ts";
import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";

/** A plate's stated length is the length of its drawn outline, within 0.1 mm. */
export const statedLengthIsTheOutlinesLength: Rule = {
  id: "stated-length-is-the-outlines-length",
  severity: "stop",
  about: "plate",
  summary: "Each plate length the file states is the length its outline really has, within 0.1 mm.",
  why: "A map drawn to true proportion is only true if the outline is. A slip in a curve shows here.",
  fix: "Correct the variant's length, the row's pitch, the tail or the outline.",
  source: "common practice",
  *check({ catalogue, derived }) {
    for (const { plate, length, statedLength, holesInRow, name } of derived.plates) {
      if (Math.abs(length - statedLength) <= 100) continue;
      const given = known(catalogue.plates, plate);
      if ("mirror_of" in given) continue;
      const index = given.variants.findIndex(({ holes }) => holes === holesInRow);
      yield {
        file: given.file,
        path: ["variants", index, "length"],
        message: `Expected ${mm(length)}, the length of the outline of ${name} with ${holesInRow} holes, got ${mm(statedLength)}`,
      };
    }
  },
  examples: [
    {
      title: "a length the outline has",
      passes: true,
      shows: "First hole, row and tail add up to the stated length.",
      edits: [],
    },
    {
      title: "a length 0.1 mm out",
      passes: true,
      shows: "Outline 54, stated 54.1: within a pencil line.",
      edits: [{ file: "plate/lower-fibula-left", path: ["variants", 0, "length"], value: 54.1 }],
    },
    {
      title: "a length a thousandth further out",
      passes: false,
      shows: "Outline 54, stated 54.101.",
      edits: [{ file: "plate/lower-fibula-left", path: ["variants", 0, "length"], value: 54.101 }],
    },
    {
      title: "a length the outline has not",
      passes: false,
      shows: "The file states 250 mm for a plate of a few centimetres.",
      edits: [{ file: "plate/lower-fibula-left", path: ["variants", 0, "length"], value: 250 }],
    },
  ],
};
