import { describe, expect, test } from "vitest";
import { step, stepDrawings } from "../../../lib/draw/figures/step.ts";
import type { StepParts } from "../../../lib/model/figure.ts";
import { type Verb, verbs } from "../../../lib/model/recipe.ts";
import { interfaces, lagParts, lockingParts } from "../step-parts.ts";

const size = { width: 44, height: 18 };
const draw = (verb: Verb, parts: StepParts, of = size): string =>
  step("step", verb, parts, interfaces, of).svg;
const body = (svg: string): string =>
  svg.slice(svg.indexOf("</desc>")).replace(/data-verb="[^"]*"/, "");
const scaleOf = (svg: string): number => Number(/data-scale="([^"]*)"/.exec(svg)?.[1]);

test("every verb has a drawing and words of its own", () => {
  expect(Object.keys(stepDrawings).sort()).toEqual([...verbs].sort());
  expect(
    new Set(verbs.map((verb) => body(draw(verb, { ...lockingParts, ...lagParts })))).size,
  ).toBe(verbs.length);
  expect(new Set(verbs.map((verb) => stepDrawings[verb].words)).size).toBe(verbs.length);
});

describe.each(verbs)("the frame of %s", (verb) => {
  test.each([
    ["a locking chain", lockingParts],
    ["a lag chain", lagParts],
    ["no parts at all", {}],
  ] as const)(
    "drawn from %s has the asked size, finite numbers and the same bytes each time",
    (_, parts) => {
      const svg = draw(verb, parts);
      expect(svg).toContain('viewBox="0 0 44 18"');
      expect(svg).not.toMatch(/NaN|Infinity|undefined|Svgjs|style=/);
      expect(draw(verb, parts)).toBe(svg);
    },
  );

  test("says once that its bone is a sign, and only where there is bone", () => {
    const svg = draw(verb, lockingParts);
    const bones = /data-bone="(marrow|cortex)"/.test(svg) ? 1 : 0;
    expect(svg.split(">not anatomy<").length - 1).toBe(bones);
  });
});

test("the drill's sleeve is drawn with its own bore at the frame's scale", () => {
  const svg = draw("drill-pilot", lockingParts);
  const bores = [...svg.matchAll(/<line[^>]*y1="([\d.]+)"[^>]*data-edge="bore"/g)].map(([, y]) =>
    Number(y),
  );
  expect(bores.length).toBeGreaterThan(0);
  for (const y of bores) expect(y).toBeCloseTo((2.8 / 2) * scaleOf(svg), 2);
});

test("a threaded zone shows teeth and a plain one a seat as wide as its data says", () => {
  const plateOf = (parts: StepParts): string =>
    /<g[^>]*data-zone="[^"]*">.*?<\/g>/.exec(draw("drive-screw", parts))?.[0] ?? "";
  const corners = (svg: string): number =>
    (/<polygon points="([^"]*)"/.exec(svg)?.[1] ?? "").split(" ").length;
  expect(plateOf(lockingParts)).toContain('data-zone="threaded"');
  expect(corners(plateOf(lockingParts))).toBeGreaterThan(corners(plateOf(lagParts)));
  const svg = draw("drive-screw", lagParts);
  const edges = [...plateOf(lagParts).matchAll(/points="([^"]*)"/g)].flatMap(([, points]) =>
    (points ?? "").split(" ").map((spot) => Number(spot.split(",")[1])),
  );
  const axis = size.height / 2 - 0.8;
  expect(edges.some((y) => Math.abs(Math.abs(y - axis) - 3.2 * scaleOf(svg)) < 0.002)).toBe(true);
});

test("a drill that stops after the near cortex is drawn shorter than one that goes through", () => {
  const tip = (parts: StepParts): number =>
    Number(/class="tool" transform="translate\(([\d.]+)/.exec(draw("drill-pilot", parts))?.[1]);
  expect(tip({ ...lockingParts, nearCortexOnly: true })).toBeGreaterThan(tip(lockingParts) + 5);
});

test("the limiter's own torque stands in its frame", () => {
  expect(draw("tighten-to-limit", lockingParts)).toContain(">1.6 N·m<");
});
