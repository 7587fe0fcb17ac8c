import type { Rule } from "../../model/rule.ts";
import { dataValues, mappedPlate } from "../mapped-plate.ts";
import { sampleMap, samplePlateMap } from "../sample-sheets.ts";

const tally = (values: readonly string[], one: string): number =>
  values.filter((value) => value === one).length;

/** On every map each hole of the plate is drawn once and labelled once, and nothing else is. */
export const everyHoleIsLabelledOnce: Rule = {
  id: "every-hole-is-labelled-once",
  severity: "stop",
  about: "sheet",
  summary:
    "On a plate map, each hole of the plate is drawn once and named once, and no name stands without its hole.",
  why: "If S3 is missing or stands twice, the surgeon and the nurse mean different holes.",
  fix: "The drawing is made from the plate's file; correct the labels there. If they are right, the drawing is at fault.",
  source: "common practice",
  *check({ derived, sheets = [] }) {
    for (const sheet of sheets) {
      if (sheet.kind !== "plate-map" && sheet.kind !== "case") continue;
      const plate = mappedPlate(sheet.map, derived.plates);
      if (plate === undefined) {
        yield {
          file: sheet.origin,
          path: [],
          message: `Unknown plate in the drawing of ${sheet.id}`,
        };
        continue;
      }
      const [drawn, named] = [dataValues(sheet.map, "hole"), dataValues(sheet.map, "label")];
      const labels = plate.holes.map(({ label }) => label);
      for (const label of new Set([...labels, ...drawn, ...named])) {
        const expected = tally(labels, label);
        const got = [tally(drawn, label), tally(named, label)];
        if (got.every((times) => times === expected)) continue;
        yield {
          file: sheet.origin,
          path: [],
          message: `Expected hole ${label} ${expected === 1 ? "once" : `${expected} times`} on ${sheet.id}, got it drawn ${got[0]} and named ${got[1]} times`,
        };
      }
    }
  },
  examples: [
    {
      title: "a sheet without a map",
      passes: true,
      shows: "Only maps are looked at.",
      edits: [],
      sheets: [],
    },
    {
      title: "a map that names none of its holes",
      passes: false,
      shows: "Holes drawn, no names.",
      edits: [],
      sheets: [samplePlateMap()],
    },
    {
      title: "a map with a hole the plate does not have",
      passes: false,
      shows: "Z9 is named; the plate has no Z9.",
      edits: [],
      sheets: [samplePlateMap({ map: sampleMap("lower-fibula-left-5", {}, ["Z9"], ["Z9"]) })],
    },
    {
      title: "a map of no plate of the library",
      passes: false,
      shows: "A map that does not say which plate it shows.",
      edits: [],
      sheets: [samplePlateMap({ map: sampleMap("nothing", {}, [], []) })],
    },
  ],
};
