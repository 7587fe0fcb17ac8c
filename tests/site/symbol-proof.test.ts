import { readFileSync } from "node:fs";
import {
  differenceCiede2000,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  lab65,
  parse,
  type Rgb,
  rgb,
  wcagContrast,
  wcagLuminance,
} from "culori";
import { PNG } from "pngjs";
import puppeteer, { type Browser } from "puppeteer";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { drawFigure, type Pen } from "../../lib/draw/canvas.ts";
import { drawBendMark } from "../../lib/draw/figures/bend-mark.ts";
import { holeParts } from "../../lib/draw/parts/hole-parts.ts";
import { signSide as side, signParts } from "../../lib/draw/parts/sign-parts.ts";
import { paints } from "../../lib/draw/tokens.ts";
import { signNames } from "../../lib/model/signs.ts";

const renderedDpi = 300;
const copiedDpi = 150;

const centred =
  (draw: (pen: Pen) => void) =>
  (pen: Pen): void =>
    pen.group("centred", { at: [side / 2, side / 2] }, draw);

/** Everything that carries a meaning of its own and may stand with the others on one sheet. */
const symbols: Readonly<Record<string, (pen: Pen) => void>> = {
  ...Object.fromEntries(
    Object.values(holeParts).map((part) => [
      `the ${part.label} hole`,
      centred((pen) => part.draw(pen, part.samples[0] ?? { through: 3 })),
    ]),
  ),
  "a bend zone": (pen) =>
    pen.group("bend", { at: [-2, 2], scale: 1 }, (inner) => drawBendMark(inner)),
  ...Object.fromEntries(signNames.map((name) => [name, signParts[name].draw])),
};

/** The pattern that length sheets set in their rows, as large as it is printed there. */
const hatch = `<style>.hatch{display:block;width:8mm;height:2.6mm;margin:4mm 1mm;border:0.25mm solid #000}</style>${readFileSync("templates/partials/hatch.njk", "utf8")}`;

type Eye = (colour: Rgb) => Rgb;
const seen: Readonly<Record<"full" | "protan" | "deutan" | "tritan", Eye>> = {
  full: (colour) => colour,
  protan: filterDeficiencyProt(1) as Eye,
  deutan: filterDeficiencyDeuter(1) as Eye,
  tritan: filterDeficiencyTrit(1) as Eye,
};
const visions = Object.keys(seen) as readonly (keyof typeof seen)[];
const names = [...Object.keys(symbols), "no screw for this reading"];
const pairs = names.flatMap((a, index) => names.slice(index + 1).map((b) => [a, b] as const));

let browser: Browser;
const copies = new Map<string, Uint8Array>();

/** A rendered symbol as a bad copier leaves it: seen, made coarser, black or white. */
function copied(png: PNG, vision: keyof typeof seen): Uint8Array {
  const block = renderedDpi / copiedDpi;
  const wide = Math.floor(png.width / block);
  const bits = new Uint8Array(wide * wide);
  for (let y = 0; y < wide; y++) {
    for (let x = 0; x < wide; x++) {
      let light = 0;
      for (let dy = 0; dy < block; dy++) {
        for (let dx = 0; dx < block; dx++) {
          const at = ((y * block + dy) * png.width + x * block + dx) * 4;
          const [r = 0, g = 0, b = 0] = png.data.subarray(at, at + 3);
          const colour: Rgb = { mode: "rgb", r: r / 255, g: g / 255, b: b / 255 };
          light += wcagLuminance(seen[vision](colour)) / block ** 2;
        }
      }
      bits[y * wide + x] = light < 0.5 ? 1 : 0;
    }
  }
  return bits;
}

/** The part of two symbols' ink that only one of them has, laid over each other. */
function apart(a: Uint8Array, b: Uint8Array): number {
  let [either, one] = [0, 0];
  for (const [index, bit] of a.entries()) {
    const other = b[index] ?? 0;
    if (bit || other) either += 1;
    if (bit !== other) one += 1;
  }
  return either === 0 ? 0 : one / either;
}

beforeAll(async () => {
  const executablePath = process.env.PUPPETEER_EXECUTABLE_PATH ?? "/usr/bin/chromium";
  browser = await puppeteer.launch({ executablePath, args: ["--no-sandbox"] });
  const page = await browser.newPage();
  const pixels = (side * 96) / 25.4;
  await page.setViewport({
    width: Math.ceil(pixels),
    height: Math.ceil(pixels),
    deviceScaleFactor: renderedDpi / 96,
  });
  for (const [index, name] of names.entries()) {
    const about = { title: name, description: name, width: side, height: side };
    const draw = symbols[name];
    const svg = draw ? drawFigure(`symbol-${index}`, about, draw).svg : hatch;
    await page.setContent(`<!doctype html><style>body{margin:0}</style>${svg}`);
    const png = PNG.sync.read(Buffer.from(await page.screenshot()));
    for (const vision of visions) copies.set(`${name} ${vision}`, copied(png, vision));
  }
}, 120_000);
afterAll(() => browser.close());

describe("on a grey copy at 150 dpi", () => {
  test.each(visions)(
    "seen as %s, every symbol leaves ink and each pair differs in shape or pattern",
    (vision) => {
      const of = (name: string): Uint8Array => copies.get(`${name} ${vision}`) ?? new Uint8Array();
      for (const name of names)
        expect(
          of(name).reduce((sum, bit) => sum + bit, 0),
          name,
        ).toBeGreaterThan(20);
      const found = pairs
        .map(([a, b]) => ({ a, b, by: apart(of(a), of(b)) }))
        .sort((one, other) => one.by - other.by);
      const [least] = found;
      process.stdout.write(
        `${vision}: ${pairs.length} pairs; the nearest are ${least?.a} and ${least?.b}, ${Math.round((least?.by ?? 0) * 100)} % of their ink apart\n`,
      );
      expect(found.filter(({ by }) => by < 0.15)).toEqual([]);
    },
  );
});

describe("the paints", () => {
  const grounds = ["metal", "tint"] as const;
  const inks = ["ink", "accent"] as const;
  const colour = (paint: keyof typeof paints): Rgb => {
    const parsed = rgb(parse(paints[paint]));
    if (parsed === undefined) throw new Error(paint);
    return parsed;
  };

  test.each(inks.flatMap((ink) => grounds.map((ground) => [ink, ground] as const)))(
    "%s on %s has a contrast of 4.5 to 1 for words, whatever eye sees it",
    (ink, ground) => {
      for (const vision of visions) {
        const [one, other] = [seen[vision](colour(ink)), seen[vision](colour(ground))];
        expect(wcagContrast(one, other)).toBeGreaterThanOrEqual(4.5);
      }
    },
  );

  test("lie far apart in lightness where they meet, in every way of seeing", () => {
    const lightness = (one: Rgb): number => lab65(one)?.l ?? 0;
    const met = visions.flatMap((vision) =>
      inks.flatMap((ink) =>
        grounds.map((ground) => {
          const [one, other] = [seen[vision](colour(ink)), seen[vision](colour(ground))];
          return {
            what: `${ink} on ${ground}, ${vision}`,
            lightness: Math.abs(lightness(one) - lightness(other)),
            difference: differenceCiede2000()(one, other),
          };
        }),
      ),
    );
    const least = (key: "lightness" | "difference") =>
      met.toSorted((a, b) => a[key] - b[key])[0] ?? met[0];
    process.stdout.write(
      `least ΔL* ${least("lightness")?.lightness.toFixed(1)} (${least("lightness")?.what}), least ΔE2000 ${least("difference")?.difference.toFixed(1)} (${least("difference")?.what})\n`,
    );
    for (const { what, lightness: by } of met) expect(by, what).toBeGreaterThan(50);
  });
});
