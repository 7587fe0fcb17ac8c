import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { spoken } from "../../lib/compose/spoken.ts";
import { plateName } from "../../lib/model/plate-name.ts";
import { openBrowser } from "../../lib/print/open-browser.ts";
import { printStyles } from "../../lib/print/print-styles.ts";
import { showJobs } from "../../lib/print/show-jobs.ts";
import { type WarmPage, warmPage } from "../../lib/print/warm-page.ts";
import { paperStyles } from "../../lib/site/paper-styles.ts";
import { renderSheet } from "../../lib/site/render-sheet.ts";
import { demo, demoSheets } from "../fixtures/demo-library.ts";

const { catalogue } = demo;
const warned = demoSheets().filter(
  ({ kind, practice }) =>
    practice === undefined && ["pairing", "plate-map", "pocket", "tray", "case"].includes(kind),
);
/** Every name with a size or of a plate that a warning may hold. */
const names = [
  ...[...catalogue.instruments.values()].map(spoken),
  ...[...catalogue.screws.values()].map(({ called }) => called),
  ...[...catalogue.zones.values()].map(({ name }) => name),
  ...[...catalogue.plates.values()].flatMap((plate) => plateName(plate).split(", ")),
].filter((name) => name.includes(" "));

let page: WarmPage;
beforeAll(async () => {
  const fonts = join("node_modules", "@fontsource/atkinson-hyperlegible-next/files");
  const css = `${paperStyles()}${printStyles("templates/style", fonts)}`;
  page = await warmPage(await openBrowser(), { css, language: "en" });
}, 60_000);
afterAll(() => page.page.browser().close());

/** The names in the boxes, cautions and signed lines of the page shown: how often each is met, and which stand on two lines. */
function meetNames(all: readonly string[]): { met: number; broken: string[] } {
  const spaced = (text: string): string => text.replaceAll("\u00a0", " ").toLowerCase();
  let met = 0;
  const broken: string[] = [];
  for (const item of document.querySelectorAll(".box li, .caution, .signed")) {
    const walker = document.createTreeWalker(item, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const text = spaced(node.textContent ?? "");
      for (const name of all)
        for (let at = text.indexOf(name); at >= 0; at = text.indexOf(name, at + 1)) {
          const range = document.createRange();
          range.setStart(node, at);
          range.setEnd(node, at + name.length);
          met += 1;
          const tops = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
          if (tops.size > 1) broken.push(`${name} in: ${text}`);
        }
    }
  }
  return { met, broken };
}

test("No warning on a printed sheet breaks the line between a part's noun and its size.", async () => {
  const lower = names.map((name) => name.toLowerCase());
  let all = 0;
  for (const sheet of warned) {
    await showJobs(page, [{ html: renderSheet(sheet), pages: 1, thumbnail: true }]);
    const { met, broken } = await page.page.evaluate(meetNames, lower);
    expect([sheet.id, sheet.format.id, broken]).toEqual([sheet.id, sheet.format.id, []]);
    all += met;
  }
  expect(all).toBeGreaterThan(200);
}, 120_000);
