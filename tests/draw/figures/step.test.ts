import { describe, expect, test } from "vitest";
import { step, stepDrawings } from "../../../lib/draw/figures/step.ts";
import type { BoneDepth, Drilled } from "../../../lib/model/bone-depth.ts";
import type { StepParts } from "../../../lib/model/figure.ts";
import { type Verb, verbs } from "../../../lib/model/recipe.ts";
import { type Drawn, edgesOf, extent, pointsOf, readSvg } from "../read-svg.ts";
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
  const told = verbs.map((verb) => /<desc[^>]*>([^<]*)</.exec(draw(verb, lagParts))?.[1]);
  expect(new Set(told).size).toBe(verbs.length);
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
  const near = { ...lockingParts, drilled: { pilot: "near-cortex" } } as const;
  expect(tip(near)).toBeGreaterThan(tip(lockingParts) + 5);
});

/** Bone's faces and the near cortex's inner side in a frame of the tests' size, mm. */
const bone = { far: 2.4, near: 18.92, inside: 18.92 - 2.6 };
const shown = ["take-out", "measure", "tap", "drive-screw", "tighten-by-hand"] as const;

/** A drilled channel of a frame: where it begins and ends, and how wide it is, mm. */
function channel(svg: string, name: string): { from: number; to: number; width: number } {
  const found = readSvg(svg).find(({ attributes }) => attributes["data-channel"] === name);
  if (found === undefined) throw new Error(`No ${name} hole`);
  const { x, width, height } = found.attributes;
  return { from: Number(x) + Number(width), to: Number(x), width: Number(height) };
}

describe.each(shown)("the hole at %s", (verb) => {
  test("goes through both cortices, stops after the near one, or between them where the surgeon decides", () => {
    const end = (pilot: BoneDepth): number =>
      channel(draw(verb, { ...lockingParts, tap: lagParts.tap, drilled: { pilot } }), "pilot").to;
    expect(end("both-cortices")).toBeLessThan(bone.far);
    const decided = end("surgeon-decides");
    expect(decided).toBeGreaterThan(bone.far + 2.6);
    expect(decided).toBeLessThan(end("near-cortex"));
    expect(end("near-cortex")).toBeLessThan(bone.inside);
    expect(end("near-cortex")).toBeGreaterThan(bone.inside - 2.6);
  });

  test("of a lag screw is wide in the near cortex and narrow from there to the far side", () => {
    const svg = draw(verb, lagParts);
    const [gliding, pilot] = [channel(svg, "gliding"), channel(svg, "pilot")];
    expect(gliding.from).toBeCloseTo(bone.near, 2);
    expect(gliding.to).toBeLessThan(bone.inside);
    expect(pilot.from).toBeCloseTo(gliding.to, 2);
    expect(pilot.to).toBeLessThan(bone.far);
    expect(gliding.width).toBeCloseTo(3.5 * scaleOf(svg), 2);
    expect(pilot.width).toBeCloseTo(2.5 * scaleOf(svg), 2);
  });
});

test("the gauge hooks the far face of a hole that goes through and reads to the end of one that does not", () => {
  const reading = (pilot: BoneDepth) => {
    const svg = draw("measure", { ...lagParts, drilled: { pilot } });
    const [line, rod] = [edgesOf(svg, "reading")[0], edgesOf(svg, "hook")[0]];
    if (line === undefined || rod === undefined) throw new Error("No gauge");
    const { width, to } = channel(svg, "pilot");
    const least = (drawn: Drawn): number => Math.min(...pointsOf(drawn).map(([x]) => x));
    return { from: least(line), tip: least(rod), high: extent(rod, 1), width, to };
  };
  const through = reading("both-cortices");
  expect(through.from).toBeCloseTo(bone.far, 2);
  expect(through.tip).toBeLessThan(bone.far);
  expect(through.high).toBeGreaterThan(through.width / 2);
  for (const pilot of ["near-cortex", "surgeon-decides"] as const) {
    const { from, tip, to, high, width } = reading(pilot);
    expect(from).toBeCloseTo(to, 2);
    expect(tip).toBeCloseTo(to, 2);
    expect(high).toBeLessThanOrEqual(width);
  }
});

test("a tap for the near cortex only stays off the far one, and in the hole", () => {
  const tip = (drilled: Drilled): number =>
    Number(
      /class="tool" transform="translate\(([\d.]+)/.exec(
        draw("tap", { ...lagParts, drilled }),
      )?.[1],
    );
  const near = tip({ pilot: "surgeon-decides", tapped: "near-cortex" });
  expect(near).toBeGreaterThan(bone.inside - 4);
  expect(near).toBeLessThan(bone.inside);
  expect(tip({ pilot: "both-cortices" })).toBeLessThan(bone.far + 2.6);
  expect(tip({ pilot: "both-cortices", tapped: "near-cortex" })).toBeCloseTo(near, 2);
});

test("only a drill that must stop has a bar before it, only one that the surgeon stops has its line drawn on", () => {
  const marks = (pilot: BoneDepth) => {
    const svg = draw("drill-pilot", { ...lockingParts, drilled: { pilot } });
    return [svg.includes('data-mark="stop"'), /<line[^>]*stroke-dasharray="3/.test(svg)];
  };
  expect(marks("both-cortices")).toEqual([false, false]);
  expect(marks("near-cortex")).toEqual([true, false]);
  expect(marks("surgeon-decides")).toEqual([false, true]);
});

test("what is confirmed is left to the words: an eye and a box, and no hole", () => {
  const [locking, lag] = [draw("confirm", lockingParts), draw("confirm", lagParts)];
  expect(locking).toBe(lag);
  const box = readSvg(lag).find(({ name }) => name === "rect")?.attributes;
  const circles = readSvg(lag).filter(({ name }) => name === "circle");
  expect(circles).toHaveLength(2);
  for (const { attributes } of circles)
    expect(Number(attributes["cx"]) + Number(attributes["r"])).toBeLessThan(Number(box?.["x"]) - 1);
});

test("words lie in clear paper: no dot of bone comes near them", () => {
  for (const verb of verbs) {
    const svg = draw(verb, lagParts);
    const words = readSvg(/<text[^>]*>not anatomy/.exec(svg)?.[0] ?? "")[0]?.attributes;
    if (words === undefined) continue;
    const top = Number(words["y"]) - 0.72 * Number(words["font-size"]);
    const dots = [...svg.matchAll(/d="([^"]*)"[^>]*data-bone=/g)].flatMap(([, d = ""]) =>
      [...d.matchAll(/M[\d.]+ ([\d.]+)/g)].map(([, y]) => Number(y)),
    );
    expect(dots.length).toBeGreaterThan(0);
    expect([verb, Math.max(...dots) + 0.2 < top]).toEqual([verb, true]);
  }
});

test("the limiter's own torque stands in its frame", () => {
  expect(draw("tighten-to-limit", lockingParts)).toContain(">1.6 N·m<");
});
