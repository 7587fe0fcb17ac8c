import { describe, expect, test } from "vitest";
import { wholeInstrument } from "../../../lib/draw/figures/whole-instrument.ts";
import { instrumentParts } from "../../../lib/draw/parts/instrument-parts.ts";
import type { Instrument } from "../../../lib/model/instrument.ts";
import { edgesOf, extent, pointsOf, readSvg } from "../read-svg.ts";
import { sampleInterfaces } from "../sample-interfaces.ts";

const samples = Object.values(instrumentParts).flatMap(
  (part): readonly Instrument[] => part.samples,
);
const drawn = (sample: Instrument, width: number) =>
  wholeInstrument(
    "i",
    { ...sample, id: "sample", system: "general", file: "sample.yaml" },
    sampleInterfaces,
    width,
  );

describe("a whole instrument", () => {
  test.each(samples.map((sample) => [sample.name, sample] as const))(
    "%s fits its width and is never enlarged",
    (_name, sample) => {
      expect(drawn(sample, 80).width).toBeLessThanOrEqual(80);
      const large = drawn(sample, 500);
      expect(large.description).toMatch(/^Drawn at true size\./);
      expect(edgesOf(large.svg, "break")).toHaveLength(0);
    },
  );

  test("a forceps' jaws meet in a point or hold a plate between flat pads, as its facts say", () => {
    const sides = (jaws: "pointed" | "flat"): readonly number[] => {
      const sample = instrumentParts.forceps.samples.find((one) => one.jaws === jaws);
      if (!sample) throw new Error(jaws);
      return edgesOf(drawn(sample, 500).svg, "jaw").map(({ attributes }) => {
        expect(attributes["data-form"]).toBe(jaws);
        const [, , y] = /^M([-\d.]+) ([-\d.]+)/.exec(attributes["d"] ?? "") ?? [];
        return Number(y);
      });
    };
    const apart = (ys: readonly number[]): number => Math.max(...ys) - Math.min(...ys);
    expect(apart(sides("pointed"))).toBeLessThan(1);
    expect(apart(sides("flat"))).toBeGreaterThan(3);
  });

  test("a forceps' arms reach into its rings", () => {
    const [forceps] = instrumentParts.forceps.samples;
    if (!forceps) throw new Error("no sample");
    const { svg } = drawn(forceps, 500);
    const segments = svg.split('<g class="segment"').map((part) => `<g class="segment"${part}`);
    const rings = segments.find((part) => part.includes('r="11"')) ?? "";
    const [ring] = readSvg(rings).filter(({ name }) => name === "circle");
    const arms = edgesOf(rings, "arm");
    const left = Number(ring?.attributes["cx"]) - 11;
    expect(arms).toHaveLength(4);
    for (const arm of arms) {
      const along = pointsOf(arm).map(([x]) => x);
      expect(Math.min(...along)).toBe(0);
      expect(Math.max(...along)).toBeGreaterThan(left + 0.5);
    }
  });

  test("keeps its proportion when it is made smaller", () => {
    const [drill] = instrumentParts.drill.samples;
    if (drill === undefined) throw new Error("no drill");
    const figure = drawn(drill, 75.8);
    const [body] = edgesOf(figure.svg, "body");
    expect(figure.width).toBeCloseTo(75.8, 3);
    expect(body && extent(body, 1)).toBeCloseTo(2.7 / 2, 2);
    expect(
      readSvg(figure.svg).find(({ attributes }) => attributes["data-part"] === "drill")?.attributes[
        "data-scale"
      ],
    ).toBe("0.5");
  });

  test("names a guide's ends in words and shows a third one as an arm", () => {
    const [guide] = instrumentParts["plain-guide"].samples;
    if (guide === undefined) throw new Error("no guide");
    const two = drawn(guide, 90);
    const three = drawn({ ...guide, ends: [...guide.ends, { name: "free", foot: 3700 }] }, 90);
    expect(two.description).toContain("Ends: centred, offset.");
    expect(readSvg(two.svg).some(({ attributes }) => attributes.class === "arm")).toBe(false);
    expect(readSvg(three.svg).some(({ attributes }) => attributes.class === "arm")).toBe(true);
    for (const end of ["centred", "offset", "free"]) expect(three.svg).toContain(`>${end}</text>`);
  });
});
