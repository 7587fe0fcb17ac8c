import { describe, expect, test } from "vitest";
import { trayMap } from "../../../lib/draw/figures/tray-map.ts";
import { instrumentParts } from "../../../lib/draw/parts/instrument-parts.ts";
import type { Defined } from "../../../lib/model/definition.ts";
import type { TrayMapSlot } from "../../../lib/model/figure.ts";
import type { Instrument } from "../../../lib/model/instrument.ts";
import { Tray } from "../../../lib/model/tray.ts";
import { capHeight } from "../../../lib/model/type-sizes.ts";
import { plates } from "../plates.ts";
import { readSvg } from "../read-svg.ts";
import { sampleInterfaces } from "../sample-interfaces.ts";
import { sampleScrews } from "../sample-screws.ts";

const instruments = Object.values(instrumentParts).flatMap(
  (part): readonly Instrument[] => part.samples,
);
const defined = (instrument: Instrument): Defined<Instrument> => ({
  ...instrument,
  id: "sample",
  system: "general",
  file: "sample.yaml",
});
const rack = Array.from({ length: 21 }, (_, index) => ({
  length: String(10 + 2 * index),
  quantity: "×4",
}));

const slots: readonly TrayMapSlot[] = [
  ...instruments.map(
    (instrument, index): TrayMapSlot => ({
      slot: `A${index + 1}`,
      words: instrument.name,
      mark: instrument.mark,
      quantity: "×2",
      instrument: defined(instrument),
      ...(index === 0 ? { looksLike: { name: "drill\u00a02.7", seen: "3\u00a0rings" } } : {}),
    }),
  ),
  {
    slot: "B1",
    words: "cortical screw 3.5",
    mark: "3.5 C",
    quantity: "84 pieces",
    rack,
    ...(sampleScrews[0] === undefined ? {} : { screw: sampleScrews[0] }),
  },
];
const tray: Defined<Tray> = {
  ...Tray.parse({
    name: "Sample tray",
    mark: "S",
    revision: "1",
    grid: { columns: 2, rows: 9 },
    size: { width: 400, height: 245 },
    total: 30,
    source: { document: "sample", section: "list" },
    slots: slots.map(({ slot }, index) => ({
      holds: "instrument",
      slot,
      at: [index % 2, Math.floor(index / 2)],
      instrument: "sample",
      quantity: 2,
    })),
  }),
  id: "sample-tray",
  system: "general",
  file: "sample-tray.yaml",
};
/** As on A4 at 80 cm. */
const type = { called: 7, body: 5.6, note: 2.7 };
const figure = trayMap("t", tray, slots, sampleInterfaces, { width: 277, height: 170 }, type);
const drawn = readSvg(figure.svg);

describe("a tray map", () => {
  test("keeps within its size in the tray's own proportion", () => {
    expect(figure.width).toBeLessThanOrEqual(277);
    expect(figure.height).toBeLessThanOrEqual(170);
    expect((figure.width - 1) / (figure.height - 1)).toBeCloseTo(400 / 245, 3);
  });

  test("shows every slot with its name, mark and pieces, and every length of a rack", () => {
    for (const { slot, mark, quantity } of slots) {
      expect(drawn.some(({ attributes }) => attributes["data-slot"] === slot)).toBe(true);
      for (const words of [slot, mark, quantity]) expect(figure.svg).toContain(`>${words}</text>`);
    }
    for (const { length } of rack) expect(figure.svg).toContain(`>${length}</text>`);
  });

  test("draws everything at one scale", () => {
    const scales = new Set(drawn.flatMap(({ attributes }) => attributes["data-scale"] ?? []));
    expect([...scales]).toEqual([String(Math.round(((277 - 1) / 400) * 1000) / 1000)]);
  });

  test("sets no capital lower than 2.3 mm", () => {
    const sizes = drawn.flatMap(({ attributes }) =>
      attributes["font-size"] === undefined ? [] : [Number(attributes["font-size"])],
    );
    expect(sizes.length).toBeGreaterThan(slots.length);
    expect(Math.min(...sizes) * capHeight).toBeGreaterThanOrEqual(2.3);
  });

  test("sets all marks alike, and never smaller than words are to be at the sheet's distance", () => {
    const sizesOf = (size: { readonly width: number; readonly height: number }) => {
      const { svg } = trayMap("t", tray, slots, sampleInterfaces, size, type);
      const bold = svg.matchAll(/font-size="([\d.]+)" font-weight="700">([^<]*)</g);
      const lengths = new Set(rack.map(({ length }) => length));
      const marks = new Set(slots.map(({ mark }) => mark).filter((mark) => !lengths.has(mark)));
      return new Set(
        [...bold].flatMap(([, size, text = ""]) => (marks.has(text) ? Number(size) : [])),
      );
    };
    expect([...sizesOf({ width: 700, height: 420 })]).toEqual([type.called]);
    expect([...sizesOf({ width: 277, height: 145 })]).toEqual([type.body]);
  });

  test("keeps the largest type where smaller type would show no more", () => {
    const [plate] = plates;
    const slot = {
      slot: "A1",
      words: "plate",
      mark: "P 7",
      quantity: "×1",
      ...(plate ? { plate } : {}),
    };
    const short = {
      ...tray,
      size: { width: 40_000, height: 40_000 },
      grid: { columns: 1, rows: 1 },
    };
    const { svg } = trayMap("t", short, [slot], sampleInterfaces, { width: 41, height: 41 }, type);
    expect(svg).not.toContain("data-plate");
    expect(svg).toContain(`font-size="${type.called}" font-weight="700">P 7<`);
  });

  test("says in numbers by how much words run over a slot that is too small", () => {
    const [, second] = slots;
    if (!second) throw new Error("no slot");
    const { svg } = trayMap("t", tray, [second], sampleInterfaces, { width: 30, height: 17 }, type);
    const [, what, by] = /data-over="([^"]*)" data-by="([\d.]+)"/.exec(svg) ?? [];
    expect(what).toBe(`the words of slot ${second.slot}`);
    expect(Number(by)).toBeGreaterThan(0);
    expect(figure.svg.includes("data-over")).toBe(false);
  });

  test("flags a look-alike by a pattern and by words", () => {
    expect(drawn.filter(({ attributes }) => attributes["data-flag"] === "look-alike")).toHaveLength(
      1,
    );
    expect(figure.svg).toContain("looks alike: drill\u00a02.7 (3\u00a0rings)");
  });

  test("says the pieces of a cramped rack once, and those of a length that differs beside it", () => {
    const [first] = sampleScrews;
    const mixed = rack.map((entry, index) => (index === 3 ? { ...entry, quantity: "×2" } : entry));
    const one: TrayMapSlot = {
      slot: "A1",
      words: "cortical screw 3.5",
      mark: "3.5 C",
      quantity: "82 pieces",
      rack: mixed,
      ...(first === undefined ? {} : { screw: first }),
    };
    const wordsAt = (height: number): readonly string[] => {
      const small = {
        ...tray,
        size: { width: 70_000, height: height * 1000 },
        grid: { columns: 1, rows: 1 },
      };
      const { svg } = trayMap(
        "t",
        small,
        [one],
        sampleInterfaces,
        {
          width: 71,
          height: height + 1,
        },
        type,
      );
      expect(svg).not.toContain("data-over");
      return [...svg.matchAll(/>([^<>]+)<\/text>/g)].map(([, text = ""]) => text);
    };
    expect(wordsAt(52).filter((words) => words === "×4")).toHaveLength(20);
    expect(wordsAt(34)).toContain("×4 each");
    expect(wordsAt(34).filter((words) => words === "×2")).toHaveLength(1);
  });

  test("refuses a slot that the tray does not have", () => {
    expect(() =>
      trayMap(
        "t",
        tray,
        [{ slot: "Z9", words: "x", mark: "x", quantity: "×1" }],
        sampleInterfaces,
        { width: 100, height: 100 },
        type,
      ),
    ).toThrow('No slot "Z9"');
  });
});
