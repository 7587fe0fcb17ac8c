import { describe, expect, test } from "vitest";
import { plateName } from "../../lib/model/plate-name.ts";
import { demo, demoSheets } from "../fixtures/demo-library.ts";

const sheets = demoSheets();
const sided = [...demo.catalogue.plates.values()].filter(({ side }) => side !== "none");

/** Every text of a view, without drawings. */
function texts(value: unknown): readonly string[] {
  if (typeof value === "string")
    return value.startsWith("<svg") ? [] : [value.replaceAll("\u00a0", " ")];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(texts) : [];
}

describe("a plate of a side", () => {
  test("is never named without LEFT or RIGHT where a plate is named in one length", () => {
    const named = sheets
      .flatMap(texts)
      .filter((text) => sided.some(({ name }) => text.startsWith(`${name},`)))
      .filter((text) => /\bholes?$/.test(text));
    expect(named.length).toBeGreaterThan(0);
    for (const text of named) expect(text).toMatch(/, (LEFT|RIGHT), \d+ holes?$/);
  });

  test.each(sided.map((plate) => [plate.id, plate] as const))(
    "%s carries its side on its labels, on its tray card and on its map's heading",
    (id, plate) => {
      const kinds = sheets.flatMap((sheet) =>
        texts(sheet).some((text) => text.startsWith(plateName(plate))) ? [sheet.kind] : [],
      );
      expect(kinds, id).toEqual(expect.arrayContaining(["labels", "tray", "plate-map"]));
    },
  );
});
