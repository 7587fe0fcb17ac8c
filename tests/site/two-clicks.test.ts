import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { checkLibrary, loadLibrary } from "../../lib/index.ts";
import { builtSite } from "./built-site.ts";
import { openTab, testBrowser } from "./open-tab.ts";

let browser: Browser;
let folder: string;
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
  folder = await builtSite();
  home = pathToFileURL(folder).href;
  browser = await testBrowser();
  ({ tab } = await openTab(browser, home, 1024));
  await tab.setJavaScriptEnabled(false);
  const start = await seen("index.html");
  clicks.set("index.html", start);
  for (const page of new Set(start.filter((path) => path.endsWith(".html"))))
    clicks.set(page, await seen(page));
}, 240_000);
afterAll(() => browser?.close());

/** The pages of documents that claims lead to. */
const documents = new Set<string>();

const { catalogue } = loadLibrary("content");
if (!catalogue) throw new Error("The demo library does not resolve");
const { plates, trays, procedures, cases, systems, screws, instruments } = catalogue;
const { sheets = [] } = checkLibrary("content", "2026-11-25");
const cards = new Map(
  sheets
    .filter(({ practice }) => practice === undefined)
    .map(({ id, format }) => [id, `cards/${id}/${format.id}.html`]),
);

/** One card of each kind. */
const firsts = new Map(sheets.map(({ kind, id }) => [kind, id.replace(/-practice$/, "")]));

/** The rows of a card's page of claims as they are written: the words of each, and the document page it leads to. */
function claimRows(path: string): readonly { readonly words: string; readonly to: string }[] {
  const [, body = ""] =
    /<tbody>(.*)<\/tbody>/s.exec(readFileSync(join(folder, path), "utf8")) ?? [];
  return body.split("</tr>").flatMap((row) => {
    const [, cell = ""] = /<td[^>]*>(.*?)<\/td>/s.exec(row) ?? [];
    const [, to = ""] = /href="(?:\.\.\/)*(documents\/[^"]+)"/.exec(row) ?? [];
    return row.includes("<td") ? [{ words: cell.replace(/<[^>]*>/g, "").trim(), to }] : [];
  });
}

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

describe("from a number on a card, without scripts", () => {
  it.each([...firsts])("the way from a %s card to its claims is in sight", async (_kind, id) => {
    expect(await seen(cards.get(id) ?? "")).toContain(`cards/${id}/sources.html`);
  });

  it.each([...cards])("%s leads to its claims, and each claim to its document", (id, card) => {
    const links = /href="(?:\.\.\/)*(cards\/[^"]+\/sources\.html)"/g;
    const told = [...readFileSync(join(folder, card), "utf8").matchAll(links)];
    expect(told.map(([, to]) => to)).toContain(`cards/${id}/sources.html`);
    const rows = claimRows(`cards/${id}/sources.html`);
    expect(rows.length).toBeGreaterThan(0);
    expect(rows.filter(({ words, to }) => words === "" || to === "")).toEqual([]);
    for (const { to } of rows) documents.add(to);
  });

  it("the document's page names its issue and date", async () => {
    expect(documents.size).toBeGreaterThan(5);
    for (const path of documents) {
      const id = path.replace(/^documents\/|\.html$/g, "");
      const { issue, date } = catalogue.documents.get(id) ?? {};
      await tab.goto(`${home}/${path}`);
      const text = await tab.$eval("main", (main) => main.textContent ?? "");
      expect(text).toContain(String(issue));
      expect(text).toContain(String(date));
    }
  });
});
