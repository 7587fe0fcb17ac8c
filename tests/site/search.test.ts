import { pathToFileURL } from "node:url";
import type { Browser, Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { checkLibrary } from "../../lib/index.ts";
import { builtSite } from "./built-site.ts";
import { openTab, testBrowser } from "./open-tab.ts";

let browser: Browser;
let home: string;
beforeAll(async () => {
  home = pathToFileURL(await builtSite()).href;
  browser = await testBrowser();
}, 240_000);
afterAll(() => browser?.close());

async function found(tab: Page, words: string): Promise<{ text: string; files: string[] }[]> {
  await tab.type("#search", words);
  return tab.$$eval("#found li", (items) =>
    items.map((item) => ({
      text: item.querySelector("a")?.textContent ?? "",
      files: [...item.querySelectorAll("a.print")].map((link) => link.getAttribute("href") ?? ""),
    })),
  );
}

describe("the search, from a folder", () => {
  it("finds the one card whose square code is read into it", async () => {
    const { sheets = [] } = checkLibrary("content", "2026-11-25");
    const coded = sheets.filter(({ cardCode }) => cardCode !== undefined);
    const { tab } = await openTab(browser, home, 1024);
    for (const id of ["pebblefin-pairing-plates", "pebblefin-pocket", "case-c"]) {
      const sheet = coded.find((one) => one.id === id);
      const text = / reads ([^.]+)\./.exec(sheet?.cardCode?.description ?? "")?.[1] ?? "";
      expect(text).toMatch(/^DEMO-[A-Z-]+ [A-Z] [0-9A-F]{8}$/);
      await tab.goto(`${home}/marks/index.html`);
      const items = await found(tab, text);
      expect(items.map((item) => item.text)).toEqual([sheet?.title]);
    }
    await tab.close();
  });

  it.each([
    [
      "a mark",
      "marks/index.html",
      "2.5",
      "2.5: drill 2.5",
      "../pdf/pebblefin-pairing-plates.a4-landscape.pdf",
    ],
    [
      "a mark on the start page",
      "index.html",
      "2.5",
      "2.5: drill 2.5",
      "pdf/pebblefin-pairing-plates.a4-landscape.pdf",
    ],
    [
      "a misspelt name",
      "index.html",
      "fibla",
      "PF LF L: Lower fibula plate, LEFT",
      "pdf/pebblefin-plate-lower-fibula-left-5.a5-landscape.pdf",
    ],
    ["a card", "index.html", "case-a", "CASE-A: Lower fibula, left", "pdf/case-a.a4-landscape.pdf"],
    [
      "a technique",
      "index.html",
      "near cortex",
      "Locking screw, near cortex only",
      "pdf/pebblefin-steps-unicortical-locking-locking-35.a4-portrait.pdf",
    ],
  ])(
    "finds %s on %s by %s",
    async (_, page, words, text, file) => {
      const { tab, noise } = await openTab(browser, home, 1024);
      await tab.goto(`${home}/${page}`);
      const hit = (await found(tab, words)).find((one) => one.text === text);
      expect(hit?.files).toContain(file);
      expect(noise).toEqual([]);
      await tab.close();
    },
    30_000,
  );

  it("says when nothing is found, and opens the first result on Enter", async () => {
    const { tab } = await openTab(browser, home, 1024);
    await tab.goto(`${home}/index.html`);
    await tab.type("#search", "zzz9");
    expect(await tab.$eval("#told", (told) => told.textContent)).toMatch(/^Nothing found/);
    await tab.$eval("#search", (field) => {
      (field as HTMLInputElement).value = "";
    });
    await tab.type("#search", "2.5");
    await Promise.all([tab.waitForNavigation(), tab.keyboard.press("Enter")]);
    expect(tab.url()).toBe(`${home}/instruments/drill-25.html`);
    await tab.close();
  }, 30_000);

  it("is not shown without scripts, where all marks are listed", async () => {
    const { tab } = await openTab(browser, home, 1024);
    await tab.setJavaScriptEnabled(false);
    await tab.goto(`${home}/marks/index.html`);
    expect((await tab.$$("tbody tr")).length).toBeGreaterThan(50);
    expect(await tab.$eval(".search", (box) => getComputedStyle(box).display)).toBe("none");
    await tab.close();
  }, 30_000);
});
