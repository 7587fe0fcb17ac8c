import { expect, it } from "vitest";
import { check } from "../../lib/check/check.ts";
import { compose } from "../../lib/compose/compose.ts";
import { derive } from "../../lib/derive/derive.ts";
import { pictures } from "../../lib/draw/pictures.ts";
import type { SheetView } from "../../lib/model/sheet.ts";
import { editedLibrary } from "./edited-library.ts";

const catalogue = editedLibrary([]);
const facts = { catalogue, derived: derive(catalogue), today: "2026-10-02" };
const sheets = compose({ ...facts, pictures });
const said = (changed: readonly SheetView[]): readonly string[] =>
  check({ ...facts, sheets: changed }).map(({ rule, message }) => `${rule}: ${message}`);

it("finds nothing on the sheets composed from the reference library", () => {
  expect(new Set(sheets.map(({ kind }) => kind)).size).toBe(9);
  expect(said(sheets)).toEqual([]);
});

const marks = [
  ["every-hole-is-labelled-once", ' data-label="S3"'],
  ["orientation-is-shown", ' data-word="face"'],
  ["side-stands-in-words", ' data-word="side"'],
] as const;

it.each(marks)("finds that a drawn map has lost a mark (%s)", (rule, mark) => {
  const lost = sheets.flatMap((sheet) =>
    sheet.kind === "plate-map" && sheet.map.svg.includes(mark)
      ? { ...sheet, map: { ...sheet.map, svg: sheet.map.svg.replace(mark, "") } }
      : [],
  );
  const found = said(lost.slice(0, 1));
  expect(found.map((line) => line.split(":")[0])).toEqual([rule]);
});

it("finds that a step card has lost a required caution", () => {
  const bare = sheets.flatMap((sheet) =>
    sheet.kind === "steps"
      ? { ...sheet, cautions: [], steps: sheet.steps.map((step) => ({ ...step, cautions: [] })) }
      : [],
  );
  const found = new Set(said(bare).map((line) => line.split(":")[0]));
  expect(found).toEqual(new Set(["required-cautions-are-printed"]));
});
