import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { create } from "fontkit";
import { describe, expect, test } from "vitest";
import { capHeight, floorSize, readingDistance, typeFloors } from "../../lib/compose/type-sizes.ts";
import type { SheetKind } from "../../lib/model/sheet.ts";

const css = readFileSync(new URL("../../templates/style/sheet.css", import.meta.url), "utf8");
const kinds = Object.keys(readingDistance) as SheetKind[];

function declared(kind: SheetKind, role: string): number {
  const rule = css
    .split("}")
    .find((text) => text.includes(`.sheet--${kind}`) && text.includes(`--${role}:`));
  return Number(rule?.match(new RegExp(`--${role}: ([0-9.]+)mm`))?.[1]);
}

describe("type sizes", () => {
  test.each([400, 600, 700])(
    "take the height of capitals from the typeface at weight %i",
    (weight) => {
      const file = `@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-${weight}-normal.woff2`;
      const font = create(
        readFileSync(createRequire(import.meta.url).resolve(file)),
      ) as unknown as { capHeight: number; unitsPerEm: number };
      expect(font.capHeight / font.unitsPerEm).toBeCloseTo(capHeight, 6);
    },
  );

  test("reach 4.65 mm of capital height for 20 minutes of arc at 800 mm", () => {
    expect(floorSize(20, 800) * capHeight).toBeCloseTo(4.654, 3);
  });

  test.each(kinds)("of a %s sheet are not below their floors", (kind) => {
    const floors = typeFloors(kind);
    expect(declared(kind, "called")).toBeGreaterThanOrEqual(floors.called);
    expect(declared(kind, "body")).toBeGreaterThanOrEqual(floors.body);
    expect(declared(kind, "note")).toBeGreaterThanOrEqual(floors.note);
    expect(declared(kind, "title")).toBeGreaterThanOrEqual(floors.called);
  });

  test("are set by role alone", () => {
    const sizes = [...css.matchAll(/font-size: ([^;]+);/g)].map(([, size]) => size);
    expect(sizes.filter((size) => !/^var\(--(title|called|body|note)\)$/.test(size ?? ""))).toEqual(
      [],
    );
    expect(sizes.length).toBeGreaterThan(30);
  });
});
