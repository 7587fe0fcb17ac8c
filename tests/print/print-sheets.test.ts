import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { checkLibrary } from "../../lib/index.ts";
import { type PrintJob, printSheets } from "../../lib/print/print-sheets.ts";
import { printStyles } from "../../lib/print/print-styles.ts";
import { expectedTexts, verifyPdf } from "../../lib/print/verify-pdf.ts";
import { renderSheet } from "../../lib/site/render-sheet.ts";

const css = printStyles(
  "templates/style",
  "node_modules/@fontsource/atkinson-hyperlegible-next/files",
);
const options = { css, language: "en", day: "2026-10-01" };
const sheets = checkLibrary("content").sheets ?? [];
const pairing = sheets.find(
  ({ id, format }) => id === "pebblefin-pairing-plates" && format.id === "a4-landscape",
);
if (pairing === undefined) throw new Error("The demo has no pairing sheet");
const job = (html: string): PrintJob => ({
  key: "k",
  title: pairing.title,
  html,
  width: 297,
  height: 210,
});
const given = process.env["PUPPETEER_EXECUTABLE_PATH"];

beforeAll(() => {
  process.env["PUPPETEER_EXECUTABLE_PATH"] ??= "/usr/lib/chromium/chromium";
});
afterAll(() => {
  if (given === undefined) delete process.env["PUPPETEER_EXECUTABLE_PATH"];
});

describe("printing a pairing sheet in a real browser", () => {
  it("gives one A4 page with every expected text, and the same bytes twice", async () => {
    const [first] = await printSheets([job(renderSheet(pairing))], options);
    const [second] = await printSheets([job(renderSheet(pairing))], options);
    if (!first || !second) throw new Error("Nothing was printed");
    expect(Buffer.from(first.pdf).equals(Buffer.from(second.pdf))).toBe(true);
    expect(first.overflow).toEqual([]);
    const facts = await verifyPdf(first.pdf, expectedTexts(pairing));
    expect(facts.pages).toBe(1);
    expect(facts.missing).toEqual([]);
    expect(facts.size[0]).toBeCloseTo((297 * 72) / 25.4, 0);
    expect(facts.size[1]).toBeCloseTo((210 * 72) / 25.4, 0);
  });

  it("notices a caution that is not shown and a sheet that runs over", async () => {
    const [caution] = pairing.cautions;
    if (caution === undefined) throw new Error("The sheet has no caution");
    const html = renderSheet(pairing)
      .replace(caution.text, "")
      .replace("<h1>", `<h1>${"long ".repeat(900)}`);
    const [printed] = await printSheets([job(html)], options);
    if (!printed) throw new Error("Nothing was printed");
    expect(printed.overflow.length).toBeGreaterThan(0);
    const facts = await verifyPdf(printed.pdf, expectedTexts(pairing));
    expect(facts.missing).toContain(caution.text);
  });

  it("keeps content from asking anything of the outside or the disk", async () => {
    const hostile =
      '<article class="sheet format--a4-landscape"><h1>x</h1><iframe src="file:///etc/passwd"></iframe><img src="http://127.0.0.1:9/x"></article>';
    const [printed] = await printSheets([job(hostile)], options);
    if (!printed) throw new Error("Nothing was printed");
    const facts = await verifyPdf(printed.pdf, ["root:"]);
    expect(facts.missing).toEqual(["root:"]);
  });
});
