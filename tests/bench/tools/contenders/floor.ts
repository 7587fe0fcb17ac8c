import { readFileSync } from "node:fs";
import puppeteer from "puppeteer";
import type { Given } from "../bench-jobs.ts";
import { secondsBelow } from "../tree-cost.ts";

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
const print = () =>
  session.send("Page.printToPDF", {
    preferCSSPageSize: true,
    printBackground: true,
    generateTaggedPDF: true,
  });
await page.tracing.start({ categories: ["toplevel"] });
await print();
const trace = await page.tracing.stop();
const root = browser.process()?.pid ?? 0;
const before = secondsBelow(root);
await print();
const writerEnds = 1_500;
await new Promise((done) => setTimeout(done, writerEnds));
const whole = secondsBelow(root) - before;
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
process.stdout.write(
  `${JSON.stringify({ main: spent / 1e6 / jobs.length, whole: whole / jobs.length })}\n`,
);
