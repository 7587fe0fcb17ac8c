import { mm } from "../../model/measure.ts";
import type { Rule } from "../../model/rule.ts";
import { meant } from "../meant.ts";
import { works } from "../work.ts";

/** Where depth is read off the drill, its marks allow for the very sleeve it goes through. */
export const marksAreReadWithTheirSleeve: Rule = {
  id: "marks-are-read-with-their-sleeve",
  severity: "stop",
  about: "technique",
  summary:
    "A technique that reads the drill's marks uses a drill whose marks allow for exactly the length of its sleeve.",
  why: "Marks made for a sleeve 30 mm long read 6 mm wrong on a sleeve 36 mm long, and look right.",
  fix: "State marks_for_sleeve_length as the instructions for use do, or measure with the depth gauge instead.",
  source: "common practice",
  *check(input) {
    for (const work of works(input)) {
      if (!work.recipe.steps.some(({ verb }) => verb === "read-marks")) continue;
      const [drill, sleeve] = [meant(work, "pilot-drill"), meant(work, "sleeve")];
      if (
        drill === undefined ||
        sleeve === undefined ||
        drill.marks_for_sleeve_length === sleeve.length
      )
        continue;
      const got =
        drill.marks_for_sleeve_length === undefined
          ? "none"
          : `marks for ${mm(drill.marks_for_sleeve_length)}`;
      const path = drill.marks_for_sleeve_length === undefined ? [] : ["marks_for_sleeve_length"];
      yield {
        file: drill.file,
        path,
        message: `Expected marks of ${drill.name} that allow for ${sleeve.name}, ${mm(sleeve.length)} long, got ${got}`,
      };
    }
  },
  examples: [
    {
      title: "no marks are read",
      passes: true,
      shows: "Depth is measured with the gauge.",
      edits: [],
    },
    {
      title: "marks for this sleeve",
      passes: true,
      shows: "Drill 2.7 has marks for a sleeve of 36; sleeve 3.5 is 36 long.",
      edits: [
        { file: "instrument/drill-27-pilot", path: ["marks_for_sleeve_length"], value: 36 },
        { file: "instrument/drill-20", path: ["marks_for_sleeve_length"], value: 30 },
        { file: "recipe/locking-through-sleeve", path: ["steps", 3, "verb"], value: "read-marks" },
        { file: "recipe/locking-through-sleeve", path: ["steps", 4, "verb"], value: "take-out" },
      ],
    },
    {
      title: "marks for another sleeve",
      passes: false,
      shows: "Drill 2.7 has marks for a sleeve of 30; sleeve 3.5 is 36 long: 6 too much.",
      edits: [
        { file: "instrument/drill-27-pilot", path: ["marks_for_sleeve_length"], value: 30 },
        { file: "recipe/locking-through-sleeve", path: ["steps", 3, "verb"], value: "read-marks" },
      ],
    },
  ],
};
