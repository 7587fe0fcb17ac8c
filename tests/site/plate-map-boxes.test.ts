import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import puppeteer, { type Browser, type Page } from "puppeteer";
import { afterAll, beforeAll, expect, test } from "vitest";
import { plateMap } from "../../lib/draw/figures/plate-map.ts";
import { step } from "../../lib/draw/figures/step.ts";
import { verbs } from "../../lib/model/recipe.ts";
import { libraryPlates } from "../draw/library-plates.ts";
import { mirrored } from "../draw/mirrored.ts";
import { plates } from "../draw/plates.ts";
import { interfaces, lagParts, lockingParts } from "../draw/step-parts.ts";

const resolve = createRequire(import.meta.url).resolve;
const face = (weight: number): string => {
  const file = resolve(
    `@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-${weight}-normal.woff2`,
  );
  const data = readFileSync(file).toString("base64");
  return `@font-face{font-family:"Atkinson Hyperlegible Next";font-weight:${weight};src:url(data:font/woff2;base64,${data})}`;
};
const style = `<style>${[400, 600, 700].map(face).join("")}svg{font-variant-numeric:tabular-nums}</style>`;

let browser: Browser;
let page: Page;
beforeAll(async () => {
  const executablePath = process.env.PUPPETEER_EXECUTABLE_PATH ?? "/usr/bin/chromium";
  browser = await puppeteer.launch({ executablePath, args: ["--no-sandbox"] });
  page = await browser.newPage();
}, 60_000);
afterAll(() => browser.close());

async function show(svg: string): Promise<void> {
  await page.setContent(`<!doctype html>${style}${svg}`);
  await page.evaluate(async () => document.fonts.ready);
}

/** Labels and holes whose boxes meet, or that leave their figure, as the browser measures them. */
const clashes = (): string[] => {
  const svg = document.querySelector("svg") as SVGSVGElement;
  const boxes = [...svg.querySelectorAll("[data-label],[data-hole],[data-word]")].map((element) => {
    const name = ["label", "hole", "word"]
      .map((key) => element.getAttribute(`data-${key}`) ?? "")
      .join(" ");
    return {
      name,
      isHole: element.hasAttribute("data-hole"),
      box: element.getBoundingClientRect(),
    };
  });
  const frame = svg.getBoundingClientRect();
  const faults = boxes
    .filter(({ box }) => box.left < frame.left - 1 || box.right > frame.right + 1)
    .map(({ name }) => `${name} leaves the figure`);
  boxes.forEach((a, at) => {
    for (const b of boxes.slice(at + 1)) {
      if (a.isHole && b.isHole) continue;
      const apart =
        a.box.right <= b.box.left ||
        b.box.right <= a.box.left ||
        a.box.bottom <= b.box.top ||
        b.box.bottom <= a.box.top;
      if (!apart) faults.push(`${a.name} meets ${b.name}`);
    }
  });
  return faults;
};

test.each(
  plates.flatMap((plate) => [
    { id: plate.id, plate },
    { id: `${plate.id}, other side`, plate: mirrored(plate) },
  ]),
)(
  "no two boxes of labels, holes and words meet on the map of $id in the browser",
  async ({ plate }) => {
    await show(
      plateMap(
        "map",
        plate,
        { width: 192, height: 66 },
        { marked: plate.holes.slice(0, 2).map((hole) => hole.label) },
      ).svg,
    );
    expect(await page.evaluate(clashes)).toEqual([]);
    expect(await page.evaluate(() => document.querySelectorAll("[data-label]").length)).toBe(
      plate.holes.length,
    );
  },
);

test.each(libraryPlates)(
  "no two boxes of labels, holes and words meet on the map of $id of a library in the browser",
  async (plate) => {
    for (const height of [66, 40]) {
      await show(plateMap("map", plate, { width: 194, height }).svg);
      expect(await page.evaluate(clashes)).toEqual([]);
      expect(await page.evaluate(() => document.querySelectorAll("[data-label]").length)).toBe(
        plate.holes.length,
      );
    }
  },
);

test("the measuring sees a label moved onto another", async () => {
  const [plate] = plates;
  if (!plate) throw new Error("no plate");
  await show(plateMap("map", plate, { width: 192, height: 66 }).svg);
  await page.evaluate(() => {
    const [one, other] = document.querySelectorAll("[data-label]");
    other?.setAttribute("x", one?.getAttribute("x") ?? "");
  });
  expect(await page.evaluate(clashes)).not.toEqual([]);
});

test.each(verbs)("the frame of %s stays within its size in the browser", async (verb) => {
  for (const size of [
    { width: 54, height: 30 },
    { width: 42, height: 22 },
    { width: 36, height: 18 },
  ]) {
    for (const parts of [lockingParts, lagParts]) {
      await show(step("step", verb, parts, interfaces, size).svg);
      const over = await page.evaluate(() => {
        const svg = document.querySelector("svg") as SVGSVGElement;
        const drawn = (svg.querySelector("g") as SVGGElement).getBBox();
        const { width, height } = svg.viewBox.baseVal;
        return Math.max(
          -drawn.x,
          -drawn.y,
          drawn.x + drawn.width - width,
          drawn.y + drawn.height - height,
        );
      });
      expect(over, JSON.stringify(size)).toBeLessThan(0.4);
    }
  }
});
