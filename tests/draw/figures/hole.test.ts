import { describe, expect, test } from "vitest";
import { hole } from "../../../lib/draw/figures/hole.ts";
import { holeParts } from "../../../lib/draw/parts/hole-parts.ts";
import type { OpeningKind } from "../../../lib/model/zone.ts";
import { edgesOf, readSvg } from "../read-svg.ts";

const kinds = Object.keys(holeParts) as OpeningKind[];

describe("a hole's symbol", () => {
  test.each(kinds)("of a %s hole says its kind in its data and its word in its title", (kind) => {
    const figure = hole("h", kind);
    expect(readSvg(figure.svg).some(({ attributes }) => attributes["data-hole"] === kind)).toBe(
      true,
    );
    expect(figure.title).toBe(holeParts[kind].label);
    expect(figure.svg).not.toContain("style=");
  });

  test("differs in its shape from every other one, without colour", () => {
    const shapes = kinds.map((kind) =>
      hole("h", kind).svg.replace(/<(title|desc)[^>]*>[^<]*<\/\1>|data-[\w-]+="[^"]*"/g, ""),
    );
    expect(new Set(shapes).size).toBe(kinds.length);
    for (const shape of shapes) {
      for (const [, colour] of shape.matchAll(/(?:fill|stroke)="(#[0-9a-f]+)"/g))
        expect(["#000000", "#ffffff"]).toContain(colour);
    }
  });

  test.each([
    ["threaded", "left of"],
    ["plain", "right of"],
  ] as const)("of a combined opening points at its %s part", (use, side) => {
    const [pointer] = edgesOf(hole("h", "combined", use).svg, "pointer");
    const x = Number(pointer?.attributes.points?.split(",")[0]);
    expect(side === "left of" ? x < 0 : x > 0).toBe(true);
    expect(hole("h", "combined", use).title).toContain(`${use} part`);
  });

  test("points at nothing where there is one part only", () => {
    expect(edgesOf(hole("h", "threaded", "threaded").svg, "pointer")).toHaveLength(0);
  });
});
