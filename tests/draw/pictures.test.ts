import { expect, test } from "vitest";
import { instrumentParts } from "../../lib/draw/parts/instrument-parts.ts";
import { pictures } from "../../lib/draw/pictures.ts";
import type { Figure } from "../../lib/model/figure.ts";
import type { Instrument } from "../../lib/model/instrument.ts";
import { readSvg } from "./read-svg.ts";
import { sampleInterfaces } from "./sample-interfaces.ts";
import { sampleScrews } from "./sample-screws.ts";

const instruments = Object.values(instrumentParts).flatMap(
  (part): readonly Instrument[] => part.samples,
);
const drawings: readonly (() => Figure)[] = [
  () => pictures.hole("hole", "combined", "plain"),
  () => pictures.scaleBar("bar"),
  ...instruments.flatMap((instrument, index) => {
    const defined = {
      ...instrument,
      id: `sample-${index}`,
      system: "general",
      file: "sample.yaml",
    };
    return [
      () => pictures.workingEnd(`end-${index}`, defined, sampleInterfaces, 26),
      () => pictures.wholeInstrument(`whole-${index}`, defined, sampleInterfaces, 90),
    ];
  }),
  ...sampleScrews.map((screw) => () => pictures.screw(screw.id, screw, sampleInterfaces, 40_000)),
];

test("Every picture is the same bytes in whatever order the pictures are drawn.", () => {
  const forwards = drawings.map((draw) => draw().svg);
  const backwards = drawings
    .toReversed()
    .map((draw) => draw().svg)
    .toReversed();
  expect(backwards).toEqual(forwards);
});

test("Pictures on one page share no id, and each names itself by its own title and description.", () => {
  const figures = drawings.map((draw) => draw());
  const ids = figures.flatMap(({ svg }) =>
    readSvg(svg).flatMap(({ attributes }) => attributes.id ?? []),
  );
  expect(new Set(ids).size).toBe(ids.length);
  for (const { id, svg, title, description, width, height } of figures) {
    const [root] = readSvg(svg);
    expect(root?.attributes).toMatchObject({
      id,
      width: `${width}mm`,
      height: `${height}mm`,
      "aria-labelledby": `${id}-title ${id}-desc`,
    });
    expect(svg).toContain(
      `<title id="${id}-title">${title}</title><desc id="${id}-desc">${description}</desc>`,
    );
    expect(svg).not.toContain("style=");
  }
});

test("No line of a picture is thinner than 0.25 mm on paper, whatever its scale.", () => {
  for (const { svg } of drawings.map((draw) => draw())) {
    const widths = readSvg(svg).flatMap(({ attributes }) => attributes["stroke-width"] ?? []);
    for (const width of widths) expect(Number(width)).toBeGreaterThanOrEqual(0.25);
    expect(svg).not.toMatch(/scale\(/);
  }
});
