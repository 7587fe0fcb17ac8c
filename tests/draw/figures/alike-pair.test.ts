import { expect, test } from "vitest";
import { alikePair } from "../../../lib/draw/figures/alike-pair.ts";
import { instrumentParts } from "../../../lib/draw/parts/instrument-parts.ts";
import type { Defined } from "../../../lib/model/definition.ts";
import type { Instrument } from "../../../lib/model/instrument.ts";
import { edgesOf, extent } from "../read-svg.ts";
import { sampleInterfaces } from "../sample-interfaces.ts";

const [sample] = instrumentParts.drill.samples;
const drill = (name: string, changed: object): Defined<Instrument> => ({
  ...(sample as Instrument),
  name,
  id: name,
  system: "general",
  file: "sample.yaml",
  ...changed,
});

test("Two drills that differ by their rings stand at true size, and their rings three times as large.", () => {
  const pair = [drill("drill 2.5", { diameter: 2500, bands: 2 }), drill("drill 2.7", {})] as const;
  const { svg } = alikePair("a", pair, sampleInterfaces, 100);
  const widths = edgesOf(svg, "band").map(({ attributes }) => Number(attributes.width));
  expect(widths.filter((width) => Math.abs(width - 0.8) < 0.01)).toHaveLength(2 + 3);
  expect(widths.filter((width) => Math.abs(width - 2.4) < 0.01)).toHaveLength(2 + 3);
  for (const name of ["drill 2.5", "drill 2.7", "× 3"]) expect(svg).toContain(`>${name}<`);
});

test("Two drills with the same rings have their tips enlarged, each by its own diameter.", () => {
  const pair = [drill("drill 2.5", { diameter: 2500 }), drill("drill 2.7", {})] as const;
  const { svg } = alikePair("a", pair, sampleInterfaces, 100);
  const bodies = edgesOf(svg, "body").map((body) => extent(body, 1));
  expect(bodies.some((high) => Math.abs(high - 7.5) < 0.05)).toBe(true);
  expect(bodies.some((high) => Math.abs(high - 8.1) < 0.05)).toBe(true);
});
