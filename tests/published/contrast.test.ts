import { readFileSync } from "node:fs";
import { wcagContrast } from "culori";
import { describe, expect, test } from "vitest";
import { paints } from "../../lib/draw/tokens.ts";

/** Least contrast of text (success criterion 1.4.3, level AA) and of graphics (1.4.11): W3C, WCAG 2.2, as printed at w3.org. */
const text = 4.5;
const graphics = 3;

/** Pairs whose contrast is known: black on white by definition 21; the others measured with three libraries, colours from memory of ISO 3864-1. */
const known = [
  ["#000000", "#ffffff", 21],
  ["#C8102E", "#ffffff", 5.88],
  ["#FFD100", "#ffffff", 1.46],
  ["#0072CE", "#000000", 4.3],
] as const;

const css = readFileSync("templates/style/site.css", "utf8");
/** The colours of the site by scheme: names to values. */
const schemes = [...css.matchAll(/:root \{([^}]*)\}/g)].map(
  ([, block = ""]) =>
    new Map(
      [...block.matchAll(/--([a-z]+): (#[0-9a-f]+);/g)].map(([, name = "", value = ""]) => [
        name,
        value,
      ]),
    ),
);

describe("contrast", () => {
  test.each(known)("of %s on %s is %f", (ink, paper, ratio) => {
    expect(wcagContrast(ink, paper)).toBeCloseTo(ratio, 2);
  });

  test("of everything drawn is that of text on metal and on its tint", () => {
    for (const paper of [paints.metal, paints.tint])
      for (const ink of [paints.ink, paints.accent])
        expect(wcagContrast(ink, paper)).toBeGreaterThanOrEqual(text);
  });

  test("of the site's words holds in the light and in the dark", () => {
    expect(schemes).toHaveLength(2);
    for (const scheme of schemes)
      for (const paper of ["page", "tint"])
        for (const ink of ["text", "quiet", "link"])
          expect(
            wcagContrast(scheme.get(ink) ?? "", scheme.get(paper) ?? ""),
          ).toBeGreaterThanOrEqual(text);
  });

  test("of what may be touched is that of graphics", () => {
    for (const scheme of schemes)
      expect(
        wcagContrast(scheme.get("link") ?? "", scheme.get("page") ?? ""),
      ).toBeGreaterThanOrEqual(graphics);
  });
});
