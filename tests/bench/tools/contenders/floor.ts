import { readFileSync } from "node:fs";
import puppeteer from "puppeteer";
import type { Given } from "../bench-jobs.ts";

type Event = {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
};

const { jobs, css }: Given = JSON.parse(readFileSync(process.argv[2] ?? "", "utf8"));
const browser = await puppeteer.launch({
  executablePath: process.env["PUPPETEER_EXECUTABLE_PATH"] ?? "",
  args: (process.env["TRAYLEAF_BROWSER_ARGS"] ?? "").split(" ").filter(Boolean),
});
const page = await browser.newPage();
await page.setContent(
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><style>${css}</style></head><body>${jobs.map(({ html }) => html).join("")}</body></html>`,
);
const session = await page.createCDPSession();
await page.tracing.start({ categories: ["toplevel"] });
await session.send("Page.printToPDF", {
  preferCSSPageSize: true,
  printBackground: true,
  generateTaggedPDF: true,
});
const trace = await page.tracing.stop();
await browser.close();
const { traceEvents } = JSON.parse(new TextDecoder().decode(trace)) as { traceEvents: Event[] };
const key = ({ pid, tid }: Event) => `${pid}.${tid}`;
const renderers = new Set(
  traceEvents
    .filter(({ name, args }) => name === "thread_name" && args?.name === "CrRendererMain")
    .map(key),
);
const spent = traceEvents
  .filter((event) => event.name.endsWith("RunTask") && renderers.has(key(event)))
  .reduce((sum, { tdur = 0 }) => sum + tdur, 0);
process.stdout.write(`${spent / 1e6 / jobs.length}\n`);
