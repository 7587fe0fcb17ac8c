import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { create } from "fontkit";
import { describe, expect, test } from "vitest";
import { type FormatKind, formats, formatsOfKind } from "../../lib/model/format.ts";
import {
  capHeight,
  floorSize,
  readingDistance,
  typeFloors,
  typeSizes,
  xHeight,
} from "../../lib/model/type-sizes.ts";

const css = readFileSync(new URL("../../templates/style/sheet.css", import.meta.url), "utf8");
const made = (Object.keys(formatsOfKind) as FormatKind[]).flatMap((kind) =>
  formatsOfKind[kind].map((id) => ({ kind, id })),
);

describe("type sizes", () => {
  test.each([400, 600, 700])(
    "take the heights of capitals and small letters from the typeface at weight %i",
    (weight) => {
      const file = `@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-${weight}-normal.woff2`;
      const font = create(
        readFileSync(createRequire(import.meta.url).resolve(file)),
      ) as unknown as { capHeight: number; xHeight: number; unitsPerEm: number };
      expect(font.capHeight / font.unitsPerEm).toBeCloseTo(capHeight, 6);
      expect(font.xHeight / font.unitsPerEm).toBeGreaterThanOrEqual(xHeight);
    },
  );

  test.each([
    [20, 800, 4.654],
    [16, 350, 1.629],
    [20, 2000, 11.636],
  ])("span %i minutes of arc at %i mm with capitals of %f mm", (arc, distance, height) => {
    expect(floorSize(arc, distance) * capHeight).toBeCloseTo(height, 3);
  });

  test("grow where small letters are low, so that these are not lost", () => {
    const low = floorSize(20, 800, { cap: 0.7, x: 0.35 });
    expect(low).toBeGreaterThan(floorSize(20, 800, { cap: 0.7, x: 0.6 }));
    expect(low * 0.35).toBeCloseTo(4.654 * 0.7, 2);
  });

  test.each(made)("of a $kind sheet on $id are not below their floors", ({ kind, id }) => {
    const floors = typeFloors(kind, formats[id]);
    const sizes = typeSizes(kind, formats[id]);
    expect(sizes.called).toBeGreaterThanOrEqual(floors.called);
    expect(sizes.body).toBeGreaterThanOrEqual(floors.body);
    expect(sizes.note).toBeGreaterThanOrEqual(floors.note);
    expect(sizes.title).toBeGreaterThan(sizes.called);
    expect(sizes.called - floors.called).toBeLessThan(0.1);
  });

  test("follow the format where it is read in the hand or across the room", () => {
    expect(readingDistance("pairing", formats["a4-landscape"])).toBe(800);
    expect(readingDistance("pairing", formats["a2-landscape"])).toBe(2000);
    expect(readingDistance("pairing", formats["id-1"])).toBe(350);
  });

  test("are set by role alone", () => {
    const sizes = [...css.matchAll(/font-size: ([^;]+);/g)].map(([, size]) => size);
    expect(sizes.filter((size) => !/^var\(--(title|called|body|note)\)$/.test(size ?? ""))).toEqual(
      [],
    );
    expect(sizes.length).toBeGreaterThan(30);
  });
});
