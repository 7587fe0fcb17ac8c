import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { checkLibrary } from "../../lib/index.ts";
import type { SheetView } from "../../lib/model/sheet.ts";
import { typeFloors } from "../../lib/model/type-sizes.ts";
import { expectedTexts } from "../../lib/print/expected-texts.ts";
import { openBrowser } from "../../lib/print/open-browser.ts";
import { paintedLetters } from "../../lib/print/painted-letters.ts";
import { pdfBook } from "../../lib/print/pdf-book.ts";
import { pdfObjects } from "../../lib/print/pdf-objects.ts";
import type { PrintJob } from "../../lib/print/print-job.ts";
import { printStyles } from "../../lib/print/print-styles.ts";
import { printTogether } from "../../lib/print/print-together.ts";
import { readBack } from "../../lib/print/read-back.ts";
import { type WarmPage, warmPage } from "../../lib/print/warm-page.ts";
import { paperStyles } from "../../lib/site/paper-styles.ts";
import { renderSheet } from "../../lib/site/render-sheet.ts";

const fonts = join("node_modules", "@fontsource/atkinson-hyperlegible-next/files");
const { sheets = [] } = checkLibrary("content", "2026-11-25");
const steps = sheets.find(({ kind, format }) => kind === "steps" && format.id === "a4-portrait");
if (steps?.kind !== "steps") throw new Error("The demo has no card of steps");
const millimetre = 72 / 25.4;
let warm: WarmPage;

beforeAll(async () => {
  process.env["PUPPETEER_EXECUTABLE_PATH"] ??= "/usr/lib/chromium/chromium";
  const css = `${paperStyles()}${printStyles("templates/style", fonts)}`;
  warm = await warmPage(await openBrowser(), { css, language: "en" });
}, 60_000);
afterAll(() => warm.page.browser().close());

/** The card with the words of its last step said again and again. */
const fuller = (times: number): SheetView => ({
  ...steps,
  steps: steps.steps.map((step, index) =>
    index === steps.steps.length - 1 ? { ...step, say: `${step.say} `.repeat(times).trim() } : step,
  ),
});

/** Prints a sheet as a build does; gives what was measured, the layout it took, and the sizes of its letters in millimetres. */
async function printed(sheet: SheetView) {
  const job: PrintJob = {
    file: "x.pdf",
    title: sheet.title,
    html: renderSheet(sheet),
    paper: [sheet.format.width, sheet.format.height],
    pages: 1,
    texts: expectedTexts(sheet),
    thumbnail: true,
  };
  const raw = await printTogether(warm, [job]);
  const layout = await warm.page.$eval(".sheet", (element) => element.className);
  const [one] = readBack(raw, [job], "2026-10-01") ?? [];
  if (!one) throw new Error("Nothing was printed");
  const { reader, pages } = pdfBook(pdfObjects(raw.pdf));
  const letters = paintedLetters(reader, pages[0] ?? 0, [0, 0, 5_000, 5_000]);
  const sizes = letters.map(({ size }) => Math.round((size / millimetre) * 100) / 100);
  return { facts: one.facts, layout, sizes: [...new Set(sizes)].sort((a, b) => a - b) };
}

test("a tray slot too small for its words is told with its name and how far they run over", async () => {
  const tray = sheets.find(({ kind, format }) => kind === "tray" && format.id === "a4-landscape");
  if (tray?.kind !== "tray") throw new Error("The demo has no tray card");
  expect((await printed(tray)).facts.overflow).toEqual([]);
  const svg = tray.map.svg.replace(
    'class="slot-words"',
    'class="slot-words" data-over="the words of slot A1" data-by="3.3"',
  );
  const { facts } = await printed({ ...tray, map: { ...tray.map, svg } });
  expect(facts.overflow).toEqual([{ what: "the words of slot A1", by: 3.3 }]);
});

describe("a sheet that is fuller and fuller", { timeout: 120_000 }, () => {
  test("is set closer, and refused when the closest does not do, in one size of type throughout", async () => {
    const loose = await printed(fuller(1));
    expect(loose.layout).not.toContain("fit--");
    expect(loose.facts.overflow).toEqual([]);
    const seen = new Map<string, number>();
    for (let times = 2; times < 60; times += 1) {
      const { facts, layout, sizes } = await printed(fuller(times));
      expect(sizes).toEqual(loose.sizes);
      const [state = "fit--loose"] = /fit--\w+/.exec(layout) ?? [];
      seen.set(facts.overflow.length > 0 ? "refused" : state, times);
      if (facts.overflow.length > 0) {
        const main = facts.overflow.find(({ rows }) => rows);
        expect(main?.by).toBeGreaterThan(0);
        expect(main?.rows?.of).toBe(steps.steps.length);
        expect(main?.rows?.fit).toBe(steps.steps.length - 1);
        expect(main?.rows?.over).toHaveLength(1);
        break;
      }
    }
    expect([...seen.keys()]).toEqual(
      expect.arrayContaining(["fit--close", "fit--closest", "refused"]),
    );
    const floors = typeFloors("steps", steps.format);
    expect(Math.min(...loose.sizes)).toBeGreaterThanOrEqual(floors.note);
  });
});
