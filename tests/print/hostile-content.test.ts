import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import puppeteer from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Printed, PrintJob } from "../../lib/print/print-job.ts";
import { printJobs } from "../../lib/print/print-jobs.ts";
import { readWithPdfjs } from "./read-with-pdfjs.ts";

const folder = mkdtempSync(join(tmpdir(), "trayleaf-hostile-"));
const secret = pathToFileURL(join(folder, "secret.html")).href;
const picture = pathToFileURL(join(folder, "secret.svg")).href;
let calls = 0;
const server = createServer((_, answer) => answer.end("called"));
server.on("connection", () => calls++);
let home = "";

beforeAll(async () => {
  process.env["PUPPETEER_EXECUTABLE_PATH"] ??= "/usr/lib/chromium/chromium";
  writeFileSync(join(folder, "secret.html"), "<h1>the secret</h1>");
  writeFileSync(
    join(folder, "secret.svg"),
    '<svg xmlns="http://www.w3.org/2000/svg" id="s"><text y="20">the secret</text></svg>',
  );
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  home = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
});
afterAll(() => {
  server.close();
  server.closeAllConnections();
  rmSync(folder, { recursive: true, force: true });
});

/** Ways in which content may reach out, each from an address. */
const ways: readonly (readonly [string, (to: string) => string])[] = [
  ["a picture", (to) => `<img src="${to}">`],
  ["a frame", (to) => `<iframe src="${to}"></iframe>`],
  ["an object", (to) => `<object data="${to}"></object><embed src="${to}">`],
  ["a link to styles", (to) => `<link rel="stylesheet" href="${to}">`],
  [
    "a link that goes ahead",
    (to) =>
      `<link rel="preload" as="image" href="${to}"><link rel="preconnect" href="${to}"><link rel="prefetch" href="${to}">`,
  ],
  [
    "a style's address",
    (to) => `<p>p</p><style>p { background: url("${to}"); content: url("${to}") }</style>`,
  ],
  ["a style's import", (to) => `<style>@import "${to}";</style>`],
  [
    "a style's font",
    (to) => `<style>@font-face { font-family: f; src: url("${to}") } p { font-family: f }</style>`,
  ],
  ["a drawing", (to) => `<svg><image href="${to}"/><use href="${to}#s"/></svg>`],
  ["a page that moves on", (to) => `<meta http-equiv="refresh" content="0;url=${to}">`],
  ["another base", (to) => `<base href="${to}"><img src="x.png">`],
  ["a film", (to) => `<video src="${to}" poster="${to}"></video>`],
  [
    "a picture that fails into a script",
    (to) => `<img src="x" onerror="fetch('${to}')"><script>fetch('${to}')</script>`,
  ],
];

async function printed(html: string): Promise<Printed> {
  const all: Printed[] = [];
  const job: PrintJob = {
    file: "pdf/x.pdf",
    title: "x",
    html: `<h1>The sheet</h1>${html}`,
    paper: [210, 297],
    pages: 1,
    texts: ["The sheet"],
    thumbnail: true,
  };
  const css = "@page { size: 210mm 297mm; margin: 0 }";
  await printJobs([job], { css, language: "en", day: "2026-10-01" }, (one) => all.push(one));
  const [one] = all;
  if (!one) throw new Error("Nothing was printed");
  return one;
}

describe("while printing", { timeout: 60_000 }, () => {
  it("a page without our guard does call out, so that the next test means something", async () => {
    const browser = await puppeteer.launch({
      executablePath: process.env["PUPPETEER_EXECUTABLE_PATH"] ?? "",
      args: ["--no-sandbox"],
    });
    const page = await browser.newPage();
    await page.setContent(ways.map(([, html]) => html(home)).join(""), {
      waitUntil: "domcontentloaded",
    });
    await browser.close();
    expect(calls).toBeGreaterThan(0);
  });

  it("content calls nobody", async () => {
    calls = 0;
    const { facts } = await printed(ways.map(([, html]) => html(home)).join(""));
    expect(facts.missing).toEqual([]);
    expect(calls).toBe(0);
  });

  it("content reads no file of this machine", async () => {
    const html = ways.map(([, way]) => way(secret) + way(picture)).join("");
    const { pdf, facts } = await printed(html);
    expect(facts.missing).toEqual([]);
    const { text } = await readWithPdfjs(pdf);
    expect(text).toContain("The sheet");
    expect(text).not.toContain("secret");
  });
});
