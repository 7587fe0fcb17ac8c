import { PNG } from "pngjs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { checkLibrary } from "../../lib/index.ts";
import { expectedTexts } from "../../lib/print/expected-texts.ts";
import type { Printed, PrintJob } from "../../lib/print/print-job.ts";
import { printJobs } from "../../lib/print/print-jobs.ts";
import { printStyles } from "../../lib/print/print-styles.ts";
import { sha256 } from "../../lib/publish/manifest.ts";
import { paperStyles } from "../../lib/site/paper-styles.ts";
import { renderSheet } from "../../lib/site/render-sheet.ts";
import { readWithPdfjs } from "./read-with-pdfjs.ts";

const css = `${paperStyles()}${printStyles(
  "templates/style",
  "node_modules/@fontsource/atkinson-hyperlegible-next/files",
)}`;
const options = { css, language: "en", day: "2026-10-01" };
const sheets = checkLibrary("content", "2026-11-25").sheets ?? [];
const pairing = sheets.find(
  ({ id, format }) => id === "pebblefin-pairing-plates" && format.id === "a4-landscape",
);
if (pairing === undefined) throw new Error("The demo has no pairing sheet");
const job = (html: string, texts: readonly string[] = []): PrintJob => ({
  file: "pdf/k.pdf",
  title: pairing.title,
  html,
  paper: [297, 210],
  pages: 1,
  texts,
  thumbnail: true,
});
async function printed(...jobs: readonly PrintJob[]): Promise<Printed> {
  const all: Printed[] = [];
  await printJobs(jobs, options, (one) => all.push(one));
  const [first] = all;
  if (!first) throw new Error("Nothing was printed");
  return first;
}
const given = process.env["PUPPETEER_EXECUTABLE_PATH"];

beforeAll(() => {
  process.env["PUPPETEER_EXECUTABLE_PATH"] ??= "/usr/lib/chromium/chromium";
});
afterAll(() => {
  if (given === undefined) delete process.env["PUPPETEER_EXECUTABLE_PATH"];
});

describe("printing in a real browser", { timeout: 60_000 }, () => {
  it("gives one A4 page with every expected text, and the same bytes twice", async () => {
    const first = await printed(job(renderSheet(pairing), expectedTexts(pairing)));
    const second = await printed(job(renderSheet(pairing), expectedTexts(pairing)));
    expect(Buffer.from(first.pdf).equals(Buffer.from(second.pdf))).toBe(true);
    expect(first.facts).toEqual({ pages: 1, overflow: [], missing: [] });
    const { pages, text, roles } = await readWithPdfjs(first.pdf);
    const bare = (words: string) => words.normalize("NFKC").replace(/\s+/g, "");
    expect(pages).toBe(1);
    for (const wanted of expectedTexts(pairing)) expect(bare(text)).toContain(bare(wanted));
    expect([...roles]).toEqual(expect.arrayContaining(["H1", "Table", "TH", "TD", "Figure"]));
  });

  it("photographs the whole of a sheet that is wider than the browser's window", async () => {
    const { thumbnail } = await printed(job(renderSheet(pairing)));
    const { width, height, data } = PNG.sync.read(Buffer.from(thumbnail ?? []));
    const inked = (from: number, to: number): number => {
      let dark = 0;
      for (let y = 0; y < height; y++)
        for (let x = Math.floor(from * width); x < to * width; x++)
          if ((data[(y * width + x) * 4] ?? 255) < 128) dark += 1;
      return dark;
    };
    expect(width / height).toBeCloseTo(297 / 210, 1);
    expect(inked(0.8, 0.96)).toBeGreaterThan(150);
    expect(inked(0.1, 0.26)).toBeGreaterThan(150);
  });

  it("gives the same bytes however many browsers print, in whatever order", async () => {
    const some = sheets.filter((_, index) => index % 29 === 0);
    const jobs = some.map((sheet): PrintJob => {
      const [width, height] = [sheet.format.width, sheet.format.height];
      const file = `${sheet.id}.${sheet.format.id}`;
      return { ...job(renderSheet(sheet)), file, paper: [width, height] };
    });
    const run = async (own: readonly PrintJob[], lanes: number) => {
      const all = new Map<string, string>();
      await printJobs(own, { ...options, lanes }, ({ file, pdf, thumbnail = pdf }) =>
        all.set(file, `${sha256(pdf)} ${sha256(thumbnail)}`),
      );
      return all;
    };
    const one = await run(jobs, 1);
    expect(one.size).toBe(jobs.length);
    expect(await run([...jobs].reverse(), 2)).toEqual(one);
  });

  it("notices a caution that is not shown, a sheet that runs over and another paper", async () => {
    const [caution] = pairing.cautions;
    if (caution === undefined) throw new Error("The sheet has no caution");
    const html = renderSheet(pairing)
      .replace(caution.text, "")
      .replace("<h1>", `<h1>${"long ".repeat(900)}`);
    const { facts } = await printed({ ...job(html, [caution.text]), paper: [210, 297] });
    expect(facts.missing).toEqual([caution.text]);
    expect(facts.overflow.map(({ what }) => what)).toContain("paper");
    expect(facts.overflow.length).toBeGreaterThan(1);
  });

  it("gives each of those printed together its own pages, also beside one that has too many", async () => {
    const page = (words: string) => ({
      ...job(`<article class="sheet format--a4-landscape"><h1>${words}</h1></article>`, [words]),
      file: words,
      thumbnail: false,
    });
    const long = page("long");
    const runsOver = { ...long, html: `${long.html}<p style="break-before: page">more</p>` };
    const all = new Map<string, Printed["facts"]>();
    await printJobs(
      [page("first"), runsOver, page("last")],
      { ...options, lanes: 1 },
      ({ file, facts }) => all.set(file, facts),
    );
    expect(all.get("first")).toEqual({ pages: 1, overflow: [], missing: [] });
    expect(all.get("last")).toEqual({ pages: 1, overflow: [], missing: [] });
    expect(all.get("long")?.pages).toBe(2);
  });

  it("keeps content from asking anything of the outside or the disk", async () => {
    const hostile =
      '<article class="sheet format--a4-landscape"><h1>x</h1><iframe src="file:///etc/passwd"></iframe><img src="http://127.0.0.1:9/x"></article>';
    const { facts } = await printed(job(hostile, ["root:"]));
    expect(facts.missing).toEqual(["root:"]);
  });
});
