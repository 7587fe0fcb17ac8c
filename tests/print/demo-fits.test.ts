import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { checkLibrary } from "../../lib/index.ts";
import { openBrowser } from "../../lib/print/open-browser.ts";
import { printStyles } from "../../lib/print/print-styles.ts";
import { raiseJob, showJobs } from "../../lib/print/show-jobs.ts";
import { type WarmPage, warmPage } from "../../lib/print/warm-page.ts";
import { paperStyles } from "../../lib/site/paper-styles.ts";
import { renderSheet } from "../../lib/site/render-sheet.ts";

const fonts = join("node_modules", "@fontsource/atkinson-hyperlegible-next/files");
const { sheets = [] } = checkLibrary("content", "2026-11-25");
let page: WarmPage;

beforeAll(async () => {
  const css = `${paperStyles()}${printStyles("templates/style", fonts)}`;
  page = await warmPage(await openBrowser(), { css, language: "en" });
}, 60_000);
afterAll(() => page.page.browser().close());

async function overflow(html: string) {
  await showJobs(page, [{ html, pages: 1, thumbnail: true }]);
  return raiseJob(page, 0);
}

describe("the demo's sheets in print media", () => {
  test("are there in every format", () => {
    expect(sheets.length).toBeGreaterThan(140);
  });

  test.each(sheets.map((sheet) => [`${sheet.id}.${sheet.format.id}`, sheet] as const))(
    "%s fits its page",
    async (_key, sheet) => {
      expect(await overflow(renderSheet(sheet))).toEqual([]);
    },
  );

  test("are measured: a sheet with one more screen of words runs over", async () => {
    const [first] = sheets;
    if (!first) throw new Error("The demo has no sheet");
    const html = renderSheet(first).replace("<h1", `${"<p>Too much.</p>".repeat(80)}<h1`);
    expect(await overflow(html)).not.toEqual([]);
  });
});
