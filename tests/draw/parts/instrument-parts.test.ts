import { describe, expect, test } from "vitest";
import { instrumentParts, instrumentShape } from "../../../lib/draw/parts/instrument-parts.ts";
import { shapeLength } from "../../../lib/draw/parts/shape.ts";
import { Instrument } from "../../../lib/model/instrument.ts";
import { sampleInterfaces } from "../sample-interfaces.ts";

const kinds = Instrument.options.map((option) => option.shape.kind.value);
const samples = Object.values(instrumentParts).flatMap(
  (part): readonly Instrument[] => part.samples,
);

describe("the drawn instruments", () => {
  test("are as many as the kinds a library can hold, each with a sample of its own", () => {
    expect(Object.keys(instrumentParts).sort()).toEqual([...kinds].sort());
    for (const [kind, part] of Object.entries(instrumentParts)) {
      expect(part.id).toBe(kind);
      expect(part.samples.length, kind).toBeGreaterThan(0);
      for (const sample of part.samples) expect(sample.kind).toBe(kind);
    }
  });

  test.each(samples.map((sample) => [sample.name, sample] as const))(
    "%s is as long as its facts say",
    (_name, sample) => {
      const thread = sample.kind === "threaded-sleeve" ? 4.5 * 0.7 : 0;
      expect(shapeLength(instrumentShape(sample, sampleInterfaces))).toBeCloseTo(
        sample.length / 1000 + thread,
        3,
      );
    },
  );

  test("refuse a coupling that the registry lacks", () => {
    const [tap] = instrumentParts.tap.samples;
    expect(tap).toBeDefined();
    if (tap !== undefined)
      expect(() => instrumentShape({ ...tap, coupling: "none" }, sampleInterfaces)).toThrow(
        'No coupling "none"',
      );
  });
});
