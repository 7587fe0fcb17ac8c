import { known } from "../../model/catalogue.ts";
import type { LaidPlate } from "../../model/laid-plate.ts";
import type { Rule, RuleInput } from "../../model/rule.ts";
import { mappedPlate } from "../mapped-plate.ts";
import { sampleMap, samplePlateMap } from "../sample-sheets.ts";

const mirrored = (a: LaidPlate, b: LaidPlate): boolean =>
  a.length === b.length &&
  a.holes.length === b.holes.length &&
  a.holes.every((hole, index) => {
    const other = b.holes[index];
    return other?.label === hole.label && other.at[0] === hole.at[0] && other.at[1] === -hole.at[1];
  });

function* drawings({ catalogue, derived }: RuleInput) {
  for (const plate of catalogue.plates.values()) {
    if (!("mirror_of" in plate)) continue;
    for (const own of derived.plates.filter((laid) => laid.plate === plate.id)) {
      const original = derived.plates.find(
        (laid) => laid.plate === plate.mirror_of && laid.holesInRow === own.holesInRow,
      );
      if (original && mirrored(original, own)) continue;
      yield {
        file: plate.file,
        path: ["mirror_of"],
        message: `Expected the mirror image of ${known(catalogue.plates, plate.mirror_of).name} with ${own.holesInRow} holes, got another drawing`,
      };
    }
  }
}

/** A sided plate's sheet says LEFT or RIGHT in words, twice, over a mirrored drawing. */
export const sideStandsInWords: Rule = {
  id: "side-stands-in-words",
  severity: "stop",
  about: "sheet",
  summary:
    "A sheet that shows a sided plate says LEFT or RIGHT as a word, in its heading and in its drawing, and left and right drawings are mirror images.",
  why: "L and R are misread across a table, and left and right plates look alike.",
  fix: "Correct the plate's side; if that is right, the drawing or the sheet is at fault.",
  source:
    "Alanazi et al., Surg J 2018, doi 10.1055/s-0038-1673340 (wrong-side implants); common practice",
  *check(input) {
    yield* drawings(input);
    for (const sheet of input.sheets ?? []) {
      if (sheet.kind !== "plate-map" && sheet.kind !== "case") continue;
      const plate = mappedPlate(sheet.map, input.derived.plates);
      if (plate === undefined || plate.side === "none") continue;
      const word = plate.side.toUpperCase();
      if (!sheet.sideWords.includes(word))
        yield {
          file: sheet.origin,
          path: [],
          message: `Missing the word ${word} in the heading of ${sheet.id}`,
        };
      if (!new RegExp(`data-word="side"[^>]*>(<[^>]*>)*\\s*${word}\\b`).test(sheet.map.svg))
        yield {
          file: sheet.origin,
          path: [],
          message: `Missing the word ${word} in the drawing of ${sheet.id}`,
        };
    }
  },
  examples: [
    {
      title: "LEFT, twice",
      passes: true,
      shows: "LEFT in the heading and LEFT in the drawing.",
      edits: [],
      sheets: [samplePlateMap()],
    },
    {
      title: "L in the heading",
      passes: false,
      shows: "L in the heading, LEFT in the drawing.",
      edits: [],
      sheets: [samplePlateMap({ sideWords: "L" })],
    },
    {
      title: "no side in the drawing",
      passes: false,
      shows: "LEFT in the heading, no word in the drawing.",
      edits: [],
      sheets: [samplePlateMap({ map: sampleMap("lower-fibula-left-5", {}, [], []) })],
    },
  ],
};
