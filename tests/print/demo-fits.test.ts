import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { compose } from "../../lib/compose/compose.ts";
import { derive } from "../../lib/derive/derive.ts";
import { pictures } from "../../lib/draw/pictures.ts";
import { loadLibrary } from "../../lib/index.ts";
import { FormatChoice, formatsOfKind } from "../../lib/model/format.ts";
import { openBrowser } from "../../lib/print/open-browser.ts";
import { printStyles } from "../../lib/print/print-styles.ts";
import { raiseJob, showJobs } from "../../lib/print/show-jobs.ts";
import { type WarmPage, warmPage } from "../../lib/print/warm-page.ts";
import { paperStyles } from "../../lib/site/paper-styles.ts";
import { renderSheet } from "../../lib/site/render-sheet.ts";

/** Every format that makes sense for each kind of sheet. */
const everyFormat = FormatChoice.parse(formatsOfKind);
const fonts = join("node_modules", "@fontsource/atkinson-hyperlegible-next/files");
const { catalogue } = loadLibrary("content");
if (!catalogue) throw new Error("The demo library does not resolve");
const publisher = { ...catalogue.publisher, cards: { formats: everyFormat } };
const everywhere = { ...catalogue, publisher };
const sheets = compose({
  catalogue: everywhere,
  derived: derive(everywhere),
  pictures,
  today: "2026-11-25",
});
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
  test("are there in every format that makes sense for their kind", () => {
    for (const [kind, ids] of Object.entries(formatsOfKind))
      expect(
        new Set(sheets.filter((one) => one.kind === kind).map(({ format }) => format.id)),
      ).toEqual(new Set(ids));
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
