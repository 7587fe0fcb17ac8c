import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import puppeteer, { type Browser, type Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

const home = mkdtempSync(join(tmpdir(), "trayleaf-browser-"));
const folder = join(home, "dist");
const address = (page: string) => pathToFileURL(join(folder, page)).href;
const kinds = [
  "index.html",
  "marks/index.html",
  "cards/index.html",
  "cards/case-a/a4-landscape.html",
  "screws/locking-35.html",
  "plates/lower-fibula-left.html",
  "systems/pebblefin.html",
  "rules/index.html",
  "findings/index.html",
  "hosting/index.html",
];
let browser: Browser;

/** A tab that notes every console line, error and request that leaves the folder. */
async function openTab(width: number): Promise<{ tab: Page; noise: string[] }> {
  const tab = await browser.newPage();
  const noise: string[] = [];
  tab.on("console", (line) => noise.push(line.text()));
  tab.on("pageerror", (error) => noise.push(String(error)));
  tab.on("requestfailed", (request) => noise.push(`failed: ${request.url()}`));
  tab.on("request", (request) => {
    if (!/^(file|data):/.test(request.url())) noise.push(`outside: ${request.url()}`);
  });
  await tab.setViewport({ width, height: 800 });
  return { tab, noise };
}

beforeAll(async () => {
  execFileSync(
    process.execPath,
    ["--import", "tsx", "lib/cli.ts", "build", "--no-pdf", "--out", folder],
    { stdio: "pipe" },
  );
  const executablePath = process.env["PUPPETEER_EXECUTABLE_PATH"] ?? "/usr/lib/chromium/chromium";
  browser = await puppeteer.launch({ executablePath, args: ["--no-sandbox"], pipe: true });
}, 120_000);
afterAll(async () => {
  await browser?.close();
  rmSync(home, { recursive: true, force: true });
});

describe("the site opened from a folder", () => {
  it.each(kinds)(
    "shows %s quietly, and 320 pixels are wide enough",
    async (page) => {
      const { tab, noise } = await openTab(320);
      await tab.goto(address(page));
      const over = await tab.evaluate(
        "document.documentElement.scrollWidth - document.documentElement.clientWidth",
      );
      expect({ noise, over }).toEqual({ noise: [], over: 0 });
      await tab.close();
    },
    30_000,
  );

  it("finds what is marked 2.5 while it is typed", async () => {
    const { tab, noise } = await openTab(1024);
    await tab.goto(address("marks/index.html"));
    await tab.type("#search", "2.5");
    const found = await tab.$$eval("#found li", (items) => items.map((item) => item.textContent));
    expect(found).toContain("2.5: drill 2.5");
    expect(noise).toEqual([]);
    await tab.close();
  }, 30_000);

  it("lists all marks without scripts", async () => {
    const { tab } = await openTab(1024);
    await tab.setJavaScriptEnabled(false);
    await tab.goto(address("marks/index.html"));
    expect(await tab.$$("tbody tr")).not.toHaveLength(0);
    expect(await tab.$(".search:not([hidden])")).toBeNull();
    await tab.close();
  }, 30_000);

  it("prints a card's page as the card alone", async () => {
    const { tab } = await openTab(1280);
    await tab.goto(address("cards/case-a/a4-landscape.html"));
    const pdf = Buffer.from(await tab.pdf({ preferCSSPageSize: true })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    await tab.close();
  }, 30_000);
});
