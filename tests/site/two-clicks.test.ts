import { pathToFileURL } from "node:url";
import type { Browser, Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { loadLibrary } from "../../lib/index.ts";
import { builtSite } from "./built-site.ts";
import { openTab, testBrowser } from "./open-tab.ts";

let browser: Browser;
let home: string;
let tab: Page;
/** What can be clicked on each page that is one click from the start, as paths from the site's root. */
const clicks = new Map<string, readonly string[]>();

/** The targets of a page's links that can be seen; a link in a row of a table is noted with the row's first link. */
async function seen(path: string): Promise<string[]> {
  await tab.goto(`${home}/${path}`);
  const all = await tab.$$eval("main a", (links) =>
    links
      .filter((link) => link.getClientRects().length > 0)
      .map((link) => (link as HTMLAnchorElement).href),
  );
  return all.map((href) => href.slice(home.length + 1).replace(/#.*/, ""));
}

beforeAll(async () => {
  home = pathToFileURL(await builtSite()).href;
  browser = await testBrowser();
  ({ tab } = await openTab(browser, home, 1024));
  await tab.setJavaScriptEnabled(false);
  const start = await seen("index.html");
  clicks.set("index.html", start);
  for (const page of new Set(start.filter((path) => path.endsWith(".html"))))
    clicks.set(page, await seen(page));
}, 240_000);
afterAll(() => browser?.close());

const { catalogue } = loadLibrary("content");
if (!catalogue) throw new Error("The demo library does not resolve");
const { plates, trays, procedures, cases, systems, screws, instruments } = catalogue;

const doors = [
  ...[...plates.values()].map(({ id, system }) => ({
    door: `plates/${id}.html`,
    pdf: new RegExp(`^pdf/${system}-plate-${id}-\\d+\\.a5-landscape\\.pdf$`),
  })),
  ...[...trays.values()].map(({ id }) => ({
    door: `trays/${id}.html`,
    pdf: new RegExp(`^pdf/[a-z-]+${id.replace(/^general-/, "")}\\.a4-landscape\\.pdf$`),
  })),
  ...[...procedures.values()].map(({ id, system }) => ({
    door: `procedures/${id}.html`,
    pdf: new RegExp(`^pdf/${system}-procedure-${id}\\.a4-portrait\\.pdf$`),
  })),
  ...[...cases.values()].map(({ id }) => ({
    door: `cards/${id}/a4-landscape.html`,
    pdf: new RegExp(`^pdf/${id}\\.a4-landscape\\.pdf$`),
  })),
  ...[...screws.values()].map(({ id, system }) => ({
    door: `screws/${id}.html`,
    pdf: new RegExp(`^pdf/${system}-pairing-plates\\.a4-landscape\\.pdf$`),
  })),
  ...[...systems.values()].map(({ id }) => ({
    door: `systems/${id}.html`,
    pdf: new RegExp(`^packs/${id}\\.a4\\.pdf$`),
  })),
];

describe("from the start page, without scripts", () => {
  it.each(doors)("$door is one click away and its PDF two", ({ door, pdf }) => {
    expect(clicks.get("index.html")).toContain(door);
    expect(clicks.get(door)?.filter((path) => pdf.test(path))).not.toEqual([]);
  });

  it.each([...instruments.keys()])(
    "the marks are one click away, and a PDF that shows %s stands in its row",
    async (id) => {
      expect(clicks.get("index.html")).toContain("marks/index.html");
      if (!tab.url().endsWith("/marks/index.html")) await tab.goto(`${home}/marks/index.html`);
      const files = await tab.$$eval(
        "tbody tr",
        (rows, page) =>
          rows
            .filter((row) => row.querySelector(`a[href="../${page}"]`))
            .flatMap((row) => [...row.querySelectorAll("a.print")])
            .filter((link) => link.getClientRects().length > 0)
            .map((link) => link.getAttribute("href") ?? ""),
        `instruments/${id}.html`,
      );
      expect(files.filter((file) => /^\.\.\/pdf\/.*(pairing|tray).*\.pdf$/.test(file))).not.toEqual(
        [],
      );
    },
  );

  it("every page of a part is one click from its printable sheet", async () => {
    const parts = [
      ...[...instruments.keys()].map((id) => `instruments/${id}.html`),
      ...[...catalogue.recipes.keys()].map((id) => `techniques/${id}.html`),
    ];
    const without: string[] = [];
    for (const page of parts)
      if (!(await seen(page)).some((path) => path.startsWith("pdf/"))) without.push(page);
    expect(without).toEqual([]);
  }, 60_000);
});
