import type { Rule } from "../../model/rule.ts";
import { meant } from "../meant.ts";
import { works } from "../work.ts";

/** Which end of a guide is meant is named, and the offset end says its direction. */
export const guideEndIsNamed: Rule = {
  id: "guide-end-is-named",
  severity: "stop",
  about: "technique",
  summary:
    "A plain guide has the end its technique asks for, and an offset end says in words which way it points.",
  why: "A guide handed by the wrong end shifts the plate when the screw is tightened.",
  fix: "Give the guide an end of that name; beside an offset end write what is marked there and which way it points.",
  source: "common practice",
  needsAll: ["plain-guide"],
  *check(input) {
    for (const work of works(input)) {
      for (const { uses, also } of work.recipe.steps) {
        for (const query of [...(uses ? [uses] : []), ...also]) {
          if (query.kind !== "plain-guide") continue;
          const guide = meant(work, query.use === "gliding" ? "gliding-guide" : "guide");
          if (guide === undefined) continue;
          const index = guide.ends.findIndex(({ name }) => name === query.end);
          const end = guide.ends[index];
          if (end === undefined) {
            const names = guide.ends.map(({ name }) => name).join(", ");
            yield {
              file: guide.file,
              path: ["ends"],
              message: `Expected ${guide.name} to have a ${query.end} end (${work.recipe.name}), got ${names}`,
            };
          } else if (end.name === "offset" && end.says === undefined) {
            yield {
              file: guide.file,
              path: ["ends", index],
              message: `Missing the direction of the offset end of ${guide.name}, in words`,
            };
          }
        }
      }
    }
  },
  examples: [
    {
      title: "an offset end that says its direction",
      passes: true,
      shows: "Guide 2.5: centred end, and offset end, arrow towards the fracture.",
      edits: [],
    },
    {
      title: "an offset end without words",
      passes: false,
      shows: "Guide 2.5 with an offset end and no word of its direction.",
      edits: [
        {
          file: "instrument/guide-25",
          path: ["ends"],
          value: [
            { name: "centred", foot: 3.7 },
            { name: "offset", foot: 3.7, offset: 1 },
            { name: "free", foot: 3.7 },
          ],
        },
      ],
    },
    {
      title: "a guide without the end asked for",
      passes: false,
      shows: "The technique asks for the centred end; guide 2.5 has a free end only.",
      edits: [
        { file: "instrument/guide-25", path: ["ends"], value: [{ name: "free", foot: 3.7 }] },
      ],
    },
  ],
};
