import puppeteer, { type Browser } from "puppeteer";
import { afterAll, beforeAll, expect, test } from "vitest";
import { scaleBar } from "../../lib/draw/figures/scale-bar.ts";
import { screw } from "../../lib/draw/figures/screw.ts";
import { workingEnd } from "../../lib/draw/figures/working-end.ts";
import { instrumentParts } from "../../lib/draw/parts/instrument-parts.ts";
import type { Figure } from "../../lib/model/figure.ts";
import type { Instrument } from "../../lib/model/instrument.ts";
import { sampleInterfaces } from "../draw/sample-interfaces.ts";
import { sampleScrews } from "../draw/sample-screws.ts";
import { type Box, pathsOf } from "./paths-of.ts";

let browser: Browser;
beforeAll(async () => {
  const executablePath = process.env.PUPPETEER_EXECUTABLE_PATH ?? "/usr/bin/chromium";
  browser = await puppeteer.launch({ executablePath, args: ["--no-sandbox"] });
}, 60_000);
afterAll(() => browser.close());

async function printed({ svg }: Figure): Promise<readonly Box[]> {
  const page = await browser.newPage();
  await page.setContent(`<!doctype html><style>body{margin:0}</style>${svg}`);
  const pdf = await page.pdf({ format: "A4", landscape: true, margin: {} });
  await page.close();
  return pathsOf(pdf);
}

const widthOf = ([left, , right]: Box): number => right - left;
const heightOf = ([, bottom, , top]: Box): number => top - bottom;

/** The box around all of a figure's paths that are smaller than the page. */
function around(boxes: readonly Box[]): Box {
  const own = boxes.filter((box) => widthOf(box) < 250);
  return [
    Math.min(...own.map(([left]) => left)),
    Math.min(...own.map(([, bottom]) => bottom)),
    Math.max(...own.map(([, , right]) => right)),
    Math.max(...own.map(([, , , top]) => top)),
  ];
}

const sampleOf = (kind: Instrument["kind"]): Instrument => {
  const [first] = instrumentParts[kind].samples;
  if (first === undefined) throw new Error(kind);
  return first;
};
const endOf = (kind: Instrument["kind"]): Figure =>
  workingEnd(
    "w",
    { ...sampleOf(kind), id: kind, system: "general", file: "sample.yaml" },
    sampleInterfaces,
    40,
  );

test("The bar that says 50 mm measures 50 mm on paper within 0.2 mm.", async () => {
  expect(widthOf(around(await printed(scaleBar("bar"))))).toBeCloseTo(50, 0);
  const bar = (await printed(scaleBar("bar"))).map(widthOf);
  expect(bar.some((width) => Math.abs(width - 50) <= 0.2)).toBe(true);
}, 60_000);

test.each(sampleScrews.map((one) => [one.name, one] as const))(
  "A %s at true size is as long and as wide on paper as its facts say, within 0.2 mm.",
  async (_name, one) => {
    const box = around(await printed(screw("s", one, sampleInterfaces, 50_000)));
    const under = one.length_counts_from === "under-head" ? one.head.height / 1000 : 0;
    expect(Math.abs(widthOf(box) - 50 - under)).toBeLessThanOrEqual(0.2);
    expect(Math.abs(heightOf(box) - one.head.diameter / 1000)).toBeLessThanOrEqual(0.2);
  },
  60_000,
);

test.each([
  ["drill", "diameter"],
  ["tap", "diameter"],
] as const)(
  "The working end of a %s at true size is as thick on paper as its facts say, within 0.2 mm.",
  async (kind, key) => {
    const instrument = sampleOf(kind);
    const size = (instrument as Partial<Record<typeof key, number>>)[key] ?? 0;
    const thick = (await printed(endOf(kind))).map(heightOf);
    expect(thick.some((height) => Math.abs(height - size / 1000) <= 0.2)).toBe(true);
  },
  60_000,
);
