import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import puppeteer from "puppeteer";
import type { Given } from "../bench-jobs.ts";

const { jobs, css, out }: Given = JSON.parse(readFileSync(process.argv[2] ?? "", "utf8"));

const browser = await puppeteer.launch({
  executablePath: process.env["PUPPETEER_EXECUTABLE_PATH"] ?? "",
  args: (process.env["TRAYLEAF_BROWSER_ARGS"] ?? "").split(" ").filter(Boolean),
});
for (const { file, title, html } of jobs) {
  const page = await browser.newPage();
  await page.setContent(
    `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${title}</title><style>${css}</style></head><body>${html}</body></html>`,
  );
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true, outline: true });
  writeFileSync(join(out, file), pdf);
  await page.close();
}
await browser.close();
