import { describe, expect, test } from "vitest";
import { workingEnd } from "../../../lib/draw/figures/working-end.ts";
import { instrumentParts } from "../../../lib/draw/parts/instrument-parts.ts";
import type { Defined } from "../../../lib/model/definition.ts";
import type { Instrument } from "../../../lib/model/instrument.ts";
import { edgesOf, extent, pointsOf, readSvg } from "../read-svg.ts";
import { sampleInterfaces } from "../sample-interfaces.ts";

const defined = (instrument: Instrument): Defined<Instrument> => ({
  ...instrument,
  id: "sample",
  system: "general",
  file: "sample.yaml",
});
const samples = Object.values(instrumentParts).flatMap(
  (part): readonly Instrument[] => part.samples,
);
const named = samples.map((sample) => [sample.name, sample] as const);
const drawn = (instrument: Instrument, end?: string): string =>
  workingEnd("w", defined(instrument), sampleInterfaces, 30, end).svg;
const sampleOf = (kind: Instrument["kind"]): Instrument => {
  const [first] = instrumentParts[kind].samples;
  if (first === undefined) throw new Error(kind);
  return first;
};

describe("a working end", () => {
  test.each(named)(
    "of %s stays within its width and says that it is at true size",
    (_name, sample) => {
      for (const width of [18, 30, 60]) {
        const figure = workingEnd("w", defined(sample), sampleInterfaces, width);
        expect(figure.width).toBeLessThanOrEqual(width);
        expect(figure.description).toContain("true size");
        expect(
          readSvg(figure.svg).find(({ attributes }) => attributes["data-part"] === sample.kind)
            ?.attributes["data-scale"],
        ).toBe("1");
      }
    },
  );

  test.each(named)(
    "of %s is broken off only where it is too long for its width",
    (_name, sample) => {
      const says = (width: number): boolean =>
        workingEnd("w", defined(sample), sampleInterfaces, width).description.includes(
          "broken off",
        );
      expect([says(1000), says(18)]).toEqual([false, true]);
    },
  );

  test.each(named)(
    "of %s has unique ids that start with the figure's own, and no style attribute",
    (_name, sample) => {
      const svg = drawn(sample);
      const ids = readSvg(svg).flatMap(({ attributes }) => attributes.id ?? []);
      expect(new Set(ids).size).toBe(ids.length);
      expect(ids.every((id) => id === "w" || id.startsWith("w-"))).toBe(true);
      expect(svg).not.toContain("style=");
    },
  );

  test.each(named)("of %s can be drawn at any plausible length", (_name, sample) => {
    for (const length of [20_000, 45_000, 150_000, 400_000]) {
      const odd = {
        ...sample,
        length,
        ...(sample.kind === "drill" ? { reach: Math.round(length * 0.7) } : {}),
      } as Instrument;
      const figure = workingEnd("w", defined(odd), sampleInterfaces, 26);
      expect(figure.width).toBeLessThanOrEqual(26);
      expect(figure.height).toBeLessThan(16);
      for (const drawn of edgesOf(figure.svg, "body"))
        expect(extent(drawn, 0)).toBeLessThanOrEqual(26);
    }
  });

  test("does not depend on what was drawn before it", () => {
    const forwards = samples.map((sample) => drawn(sample));
    const backwards = samples
      .toReversed()
      .map((sample) => drawn(sample))
      .toReversed();
    expect(backwards).toEqual(forwards);
  });

  test.each([
    ["a drill", "drill", "body", 2.7],
    ["a wire", "wire", "body", 1.6],
    ["a tap", "tap", "thread", 3.5],
    ["a depth gauge's hook", "depth-gauge", "hook", 1.7],
  ] as const)("of %s is as thick as its facts say", (_what, kind, edge, size) => {
    const [first] = edgesOf(drawn(sampleOf(kind)), edge);
    expect(first && extent(first, 1)).toBeCloseTo(size, 1);
  });

  test.each([
    ["a threaded sleeve", "threaded-sleeve", 2.8],
    ["a guide", "plain-guide", 2.6],
    ["an insert", "reduction-insert", 2.6],
  ] as const)("of %s shows its bore dashed at the true width", (_what, kind, bore) => {
    const lines = edgesOf(drawn(sampleOf(kind)), "bore");
    const heights = lines.flatMap((line) => pointsOf(line).map((point) => point[1]));
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(bore, 1);
    expect(lines.every(({ attributes }) => attributes["stroke-dasharray"] !== undefined)).toBe(
      true,
    );
  });

  test("of a tap and of a sleeve repeats its tooth once a pitch", () => {
    for (const [kind, pitch] of [
      ["tap", 1.25],
      ["threaded-sleeve", 0.7],
    ] as const) {
      const [thread] = edgesOf(drawn(sampleOf(kind)), "thread");
      const upper = thread === undefined ? [] : pointsOf(thread).filter(([, y]) => y < 0);
      const crests = upper
        .filter(([, y]) => y <= Math.min(...upper.map((point) => point[1])) + 0.01)
        .map(([x]) => x);
      expect(crests.length).toBeGreaterThan(1);
      for (const [index, x] of crests.slice(1).entries())
        expect(x - (crests[index] ?? 0)).toBeCloseTo(pitch, 2);
    }
  });

  test.each([0, 1, 2, 3, 4, 5])("of a drill with %d rings shows that many", (bands) => {
    expect(edgesOf(drawn({ ...sampleOf("drill"), bands } as Instrument), "band")).toHaveLength(
      bands,
    );
  });

  test("of a guide turns the named end to the left, and only the offset end has an arrow", () => {
    const guide = sampleOf("plain-guide");
    expect(edgesOf(drawn(guide, "offset"), "offset-arrow")).toHaveLength(1);
    expect(edgesOf(drawn(guide, "centred"), "offset-arrow")).toHaveLength(0);
    const foot = (end: string) =>
      readSvg(drawn(guide, end)).find(({ attributes }) => attributes["data-foot"] === end);
    const middleOf = (end: string): number => {
      const element = foot(end);
      const heights = element === undefined ? [] : pointsOf(element).map((point) => point[1]);
      return (Math.max(...heights) + Math.min(...heights)) / 2;
    };
    expect(middleOf("centred")).toBeCloseTo(0, 3);
    expect(middleOf("offset")).toBeCloseTo(0.4, 3);
  });

  test.each(Object.entries(sampleInterfaces.drives))(
    "of a driver shows the section of %s beside its tip at true size",
    (id, drive) => {
      const svg = drawn({ ...sampleOf("driver-shaft"), drive: id } as Instrument);
      const section = readSvg(svg).find(
        ({ attributes }) => attributes["data-drive"] === drive.form,
      );
      expect(section?.attributes["data-across"]).toBe(String(drive.across / 1000));
    },
  );

  test("of a drill, a sleeve and a guide equal their approved picture", async () => {
    await expect(`${drawn(sampleOf("drill"))}\n`).toMatchFileSnapshot(
      "../approved/working-end-drill.svg",
    );
    await expect(`${drawn(sampleOf("threaded-sleeve"))}\n`).toMatchFileSnapshot(
      "../approved/working-end-threaded-sleeve.svg",
    );
    await expect(`${drawn(sampleOf("plain-guide"), "offset")}\n`).toMatchFileSnapshot(
      "../approved/working-end-guide-offset.svg",
    );
  });
});
