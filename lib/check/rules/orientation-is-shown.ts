import { known } from "../../model/catalogue.ts";
import type { Rule, RuleInput } from "../../model/rule.ts";
import { dataValues } from "../mapped-plate.ts";
import { samplePlateMap } from "../sample-sheets.ts";

function* combined({ catalogue }: RuleInput) {
  const isCombined = (opening: string): boolean =>
    known(catalogue.openings, opening).zones.length > 1;
  for (const plate of catalogue.plates.values()) {
    if ("mirror_of" in plate) continue;
    const { file, row, holes } = plate;
    if (isCombined(row.opening) && row.threaded_end === undefined)
      yield {
        file,
        path: ["row"],
        message: `Missing threaded_end: which end of the combined openings of ${plate.name} is threaded`,
      };
    for (const [index, { label, opening, threaded_end }] of holes.entries()) {
      if (isCombined(opening) && threaded_end === undefined)
        yield {
          file,
          path: ["holes", index],
          message: `Missing threaded_end: which end of hole ${label} is threaded`,
        };
    }
  }
}

/** A plate map shows which end goes towards the body, which face is up and which end of a combined opening is threaded. */
export const orientationIsShown: Rule = {
  id: "orientation-is-shown",
  severity: "stop",
  about: "plate",
  summary:
    "A plate map shows the end towards the body and the face that lies up; each combined opening says which of its ends is threaded.",
  why: "A straight plate can be handed the wrong way round, and its threaded parts then lie where the plain parts should.",
  fix: "State threaded_end for the row or the hole, end_cue and up_face for the plate.",
  source: "common practice",
  *check(input) {
    yield* combined(input);
    for (const sheet of input.sheets ?? []) {
      if (sheet.kind !== "plate-map") continue;
      const words = dataValues(sheet.map, "word");
      const missing = [
        ...(words.includes("proximal") ? [] : ["the end towards the body in the drawing"]),
        ...(words.includes("face") ? [] : ["the face that lies up in the drawing"]),
        ...(sheet.orientation.filter((line) => line.trim() !== "").length >= 2
          ? []
          : ["both lines of orientation in words"]),
      ];
      if (missing.length > 0)
        yield {
          file: sheet.origin,
          path: [],
          message: `Missing on ${sheet.id}: ${missing.join(", ")}`,
        };
    }
  },
  examples: [
    {
      title: "arrow, face and words",
      passes: true,
      shows: "An arrow towards the body, this face up, and both in words.",
      edits: [],
      sheets: [samplePlateMap()],
    },
    {
      title: "no words of orientation",
      passes: false,
      shows: "A map without a word of which end goes where.",
      edits: [],
      sheets: [samplePlateMap({ orientation: [] })],
    },
    {
      title: "a combined opening without its threaded end",
      passes: false,
      shows: "The row's combined openings do not say which end is threaded.",
      edits: [{ file: "plate/lower-fibula-left", path: ["row", "threaded_end"], value: undefined }],
    },
  ],
};
