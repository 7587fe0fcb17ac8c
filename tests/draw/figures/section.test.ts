import { describe, expect, test } from "vitest";
import { section } from "../../../lib/draw/figures/section.ts";
import { textWidth } from "../../../lib/draw/text-widths.ts";
import type { Defined } from "../../../lib/model/definition.ts";
import type { SectionParts, SectionView } from "../../../lib/model/figure.ts";
import type { Screw } from "../../../lib/model/screw.ts";
import { Zone } from "../../../lib/model/zone.ts";
import { edgesOf, pointsOf, readSvg } from "../read-svg.ts";
import { sampleInterfaces } from "../sample-interfaces.ts";
import { sampleScrews } from "../sample-screws.ts";

const source = { document: "sample", section: "drawing" };
const zone = (facts: object): Defined<Zone> => ({
  ...Zone.parse({ source, permits: [], ...facts }),
  id: "zone",
  system: "general",
  file: "zone.yaml",
});
const threaded = zone({ kind: "threaded", name: "threaded part 3.5", through: 4, thread: "th-35" });
const round = zone({
  kind: "plain-round",
  name: "plain round hole 3.5",
  through: 4.2,
  seat: 6.4,
  seat_form: "spherical",
});
const screwOf = (kind: Screw["class"], changed: object = {}): Defined<Screw> => {
  const found = sampleScrews.find((one) => one.class === kind);
  if (found === undefined) throw new Error(kind);
  return { ...found, example_length_index: 7, ...changed };
};
const locking = (changed: object = {}): SectionParts => ({
  screw: screwOf("locking", changed),
  zone: threaded,
  plateName: "sample plate",
  plateThickness: 3300,
});
const plain = (changed: object = {}): SectionParts => ({
  screw: screwOf("cortical", changed),
  zone: round,
  plateName: "sample plate",
  plateThickness: 3300,
});
const size = { width: 92, height: 46 };
const drawn = (parts: SectionParts, view: SectionView = "seated") =>
  section("s", view, parts, sampleInterfaces, size);

/** A measure of a cut view: its length on paper divided by the view's scale, and the size it tells, mm. */
function measured(svg: string, name: string): { readonly shown: number; readonly told: number } {
  const elements = readSvg(svg);
  const scale = Number(
    elements.find(({ attributes }) => attributes.class === "section")?.attributes["data-scale"],
  );
  const line = elements.find(({ attributes }) => attributes["data-dimension"] === name);
  if (line === undefined) throw new Error(`No measure ${name}`);
  const [from, to] = pointsOf(line);
  if (from === undefined || to === undefined) throw new Error(name);
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return { shown: long / scale, told: Number(line.attributes["data-size"]) };
}

describe("a cut through hole and screw", () => {
  test.each([
    ["locking, its thread", locking(), "thread", 3.5],
    ["locking, its core", locking(), "core", 2.8],
    ["locking, its pitch", locking(), "pitch", 0.8],
    ["locking, its head", locking(), "head", 5.4],
    ["locking, its plate", locking(), "plate", 3.3],
    ["locking, its length", locking(), "length", 24],
    ["plain, its head", plain(), "head", 6],
    ["plain, its length", plain(), "length", 24],
    ["with another pitch", locking({ pitch: 1250 }), "pitch", 1.25],
    ["with another core", plain({ core: 2000 }), "core", 2],
    [
      "with another head",
      plain({ head: { form: "spherical", diameter: 5200, height: 2600 } }),
      "head",
      5.2,
    ],
    ["with a thinner plate", { ...plain(), plateThickness: 1200 }, "plate", 1.2],
  ] as const)(
    "%s measures what the data says, within 0.1 mm",
    (_what, parts, name, millimetres) => {
      const { shown, told } = measured(drawn(parts).svg, name);
      expect(told).toBe(millimetres);
      expect(shown).toBeCloseTo(millimetres, 1);
    },
  );

  test.each([
    ["lag-holes", "pilot", 2.5],
    ["lag-holes", "gliding", 3.5],
  ] as const)("in the view %s measures the %s hole", (view, name, millimetres) => {
    const { shown, told } = measured(drawn(plain({ gliding: 3500 }), view).svg, name);
    expect(told).toBe(millimetres);
    expect(shown).toBeCloseTo(millimetres, 1);
  });

  test("gives the plate the thread of the head, tooth for tooth", () => {
    const { svg } = drawn(locking());
    const scale = Number(
      readSvg(svg).find(({ attributes }) => attributes.class === "section")?.attributes[
        "data-scale"
      ],
    );
    const [edge] = edgesOf(svg, "passage");
    const crests = (edge === undefined ? [] : pointsOf(edge)).filter(
      ([, y], index, all) => y < (all[index - 1]?.[1] ?? -1) && y < (all[index + 1]?.[1] ?? -1),
    );
    expect(crests.length).toBeGreaterThanOrEqual(2);
    const [first, second] = crests;
    expect(((second?.[0] ?? 0) - (first?.[0] ?? 0)) / scale).toBeCloseTo(0.7, 1);
  });

  test("says that bone is not anatomy and that the length is an example, and tells its facts in words", () => {
    for (const [view, parts] of [
      ["seated", locking()],
      ["seated", plain()],
      ["lag-seated", plain({ gliding: 3500 })],
    ] as const) {
      const figure = drawn(parts, view);
      expect(figure.svg).toContain("not anatomy");
      expect(figure.svg).toContain("24: an example length from the rack");
      expect(figure.facts?.map(([what]) => what)).toContain("plate");
      for (const [what, value] of figure.facts ?? [])
        expect(figure.description).toContain(`${what}: ${value}`);
    }
  });

  test.each([
    ["seated", locking()],
    ["seated", plain()],
    ["lag-holes", plain({ gliding: 3500 })],
    ["lag-seated", plain({ gliding: 3500 })],
  ] as const)("keeps its words on the paper and apart, %s", (view, parts) => {
    for (const [width, height, letter] of [
      [60.6, 30, 2.7],
      [60.6, 46, 2.75],
      [66, 55, 3],
      [88, parts.zone.kind === "threaded" ? 27 : 30, 2.7],
      [94, 30, 3],
      [94, 33, 3.3],
      [94, 46, 4],
      [110, 56, 4],
      [194, 60, 4],
    ] as const) {
      const { svg } = section("s", view, parts, sampleInterfaces, { width, height, letter });
      const words = [...svg.matchAll(/<text\b[^>]*>([^<]*)<\/text>/g)].flatMap(
        ([element, text = ""]) =>
          readSvg(element).map(({ attributes }) => {
            const size = Number(attributes["font-size"]);
            const long = textWidth(text, size, Number(attributes["font-weight"]) as 400 | 600);
            const anchor = { middle: 0.5, end: 1 }[attributes["text-anchor"] ?? ""] ?? 0;
            const from = Number(attributes["x"]) - anchor * long;
            const y = Number(attributes["y"]);
            return { text, from, to: from + long, top: y - 0.72 * size, bottom: y + 0.22 * size };
          }),
      );
      expect(words.length).toBeGreaterThan(3);
      for (const one of words) {
        const { from, to, top, bottom } = one;
        const inside = from >= 0 && to <= width + 0.01 && top >= 0 && bottom <= height;
        expect([one.text, width, inside]).toEqual([one.text, width, true]);
        const struck = words.filter(
          (other) =>
            other !== one &&
            other.from < to &&
            from < other.to &&
            other.top < bottom &&
            top < other.bottom,
        );
        expect([one.text, width, struck.map(({ text }) => text)]).toEqual([one.text, width, []]);
      }
    }
  });

  test.each([
    ["seated", locking()],
    ["seated", { ...plain(), depth: "surgeon-decides" }],
    ["lag-holes", plain({ gliding: 3500 })],
    ["lag-seated", plain({ gliding: 3500 })],
  ] as const)("says not anatomy in clear paper, off dots, lines and leaders, %s", (view, parts) => {
    for (const [width, height, letter] of [
      [60.6, 30, 2.7],
      [88, 30, 2.7],
      [94, 46, 4],
    ] as const) {
      const { svg } = section("s", view, parts, sampleInterfaces, { width, height, letter });
      const words = readSvg(/<text[^>]*>not anatomy/.exec(svg)?.[0] ?? "")[0]?.attributes;
      const [x, y, size] = ["x", "y", "font-size"].map((name) => Number(words?.[name]));
      if (x === undefined || y === undefined || size === undefined) throw new Error("No words");
      const [from, to] = [x - 0.5, x + textWidth("not anatomy", size) + 0.5];
      const [top, bottom] = [y - 0.72 * size, y + 0.22 * size];
      const dots = [...svg.matchAll(/d="([^"]*)"[^>]*data-bone=/g)].flatMap(([, d = ""]) =>
        [...d.matchAll(/M[\d.]+ ([\d.]+)/g)].map(([, at]) => Number(at)),
      );
      expect(Math.max(...dots) + 0.2).toBeLessThan(top);
      const crossing = readSvg(svg)
        .filter(({ name }) => name === "line")
        .map(pointsOf)
        .filter((ends) => {
          const [xs, ys] = [ends.map(([at]) => at), ends.map(([, at]) => at)];
          const beside = Math.max(...xs) < from || Math.min(...xs) > to;
          return !beside && Math.max(...ys) > top + 0.1 && Math.min(...ys) < bottom;
        });
      expect([view, width, crossing]).toEqual([view, width, []]);
    }
  });

  test("says over a lag screw's holes which is drilled first", () => {
    const elements = readSvg(drawn(plain({ gliding: 3500 }), "lag-holes").svg);
    const measureAt = (name: string) =>
      elements.find(({ attributes }) => attributes["data-dimension"] === name)?.attributes["x1"];
    const { svg } = drawn(plain({ gliding: 3500 }), "lag-holes");
    const wordAt = (word: string) => new RegExp(`<text x="([\\d.]+)"[^>]*>${word}<`).exec(svg)?.[1];
    expect(wordAt("first")).toBe(measureAt("gliding"));
    expect(wordAt("then")).toBe(measureAt("pilot"));
    expect(measureAt("gliding")).not.toBe(measureAt("pilot"));
  });

  test("ends the bone before the measures where the surgeon decides how deep, without a far face", () => {
    const { svg, title } = drawn({ ...plain(), depth: "surgeon-decides" });
    const dots = [...svg.matchAll(/d="([^"]*)"[^>]*data-bone=/g)].flatMap(([, d = ""]) =>
      [...d.matchAll(/M([\d.]+) /g)].map(([, at]) => Number(at)),
    );
    const core = readSvg(svg).find(({ attributes }) => attributes["data-dimension"] === "core");
    expect(Math.min(...dots)).toBeGreaterThan(Number(core?.attributes["x1"]) + 0.5);
    expect(title).not.toContain("near side only");
    expect(drawn({ ...plain(), depth: "near-cortex" }).title).toContain("near side only");
  });

  test("keeps a plain head's plate on the bone and a locking head's plate off it", () => {
    const gap = (parts: SectionParts): number => {
      const { svg } = drawn(parts);
      const elements = readSvg(svg);
      const plate = edgesOf(svg, "passage")[0];
      const face = plate === undefined ? 0 : Math.min(...pointsOf(plate).map(([x]) => x));
      const bone = elements.filter(
        ({ name, attributes }) => name === "line" && attributes["stroke-width"] === "0.5",
      );
      return face - Math.max(...bone.flatMap((line) => pointsOf(line).map(([x]) => x)));
    };
    expect(gap(plain())).toBeCloseTo(0, 1);
    expect(gap(locking())).toBeGreaterThan(0.5);
  });
});
