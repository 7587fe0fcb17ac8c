import type { Browser } from "puppeteer";
import type { SheetFit } from "../model/rule.ts";
import { Stop } from "../model/stop.ts";
import { measureFit } from "./measure-fit.ts";
import { normalisePdf } from "./normalise-pdf.ts";
import { closeBrowser, openBrowser } from "./open-browser.ts";
import { show, type WarmPage, warmPage } from "./warm-page.ts";

/** One sheet to print: its HTML fragment and its paper in millimetres. */
export type PrintJob = {
  readonly key: string;
  readonly title: string;
  readonly html: string;
  readonly width: number;
  readonly height: number;
};

/** A printed sheet: the PDF, a small PNG of it, and what ran over. */
export type Printed = {
  readonly key: string;
  readonly pdf: Uint8Array;
  readonly thumbnail: Uint8Array;
  readonly overflow: SheetFit["overflow"];
};

export type PrintOptions = {
  readonly css: string;
  readonly language: string;
  readonly day: string;
};

const limit = 20_000;
const perMm = 96 / 25.4;

function within<T>(work: Promise<T>, { page }: WarmPage): Promise<T> {
  return new Promise((done, fail) => {
    const timer = setTimeout(() => fail(new Error(`no answer within ${limit / 1000} s`)), limit);
    page.once("error", fail);
    work.then(done, fail).finally(() => {
      clearTimeout(timer);
      page.off("error", fail);
    });
  });
}

/** Prints what the page shows as one tagged PDF with an outline, same bytes each time. */
export async function printPage({ session }: WarmPage, day: string): Promise<Uint8Array> {
  const { data } = await session.send("Page.printToPDF", {
    preferCSSPageSize: true,
    printBackground: true,
    generateTaggedPDF: true,
    generateDocumentOutline: true,
  });
  return normalisePdf(Buffer.from(data, "base64"), day);
}

async function printOne(warm: WarmPage, job: PrintJob, day: string): Promise<Printed> {
  await show(warm, job.title, job.html);
  const overflow = await measureFit(warm);
  const clip = { x: 0, y: 0, width: job.width * perMm, height: job.height * perMm, scale: 0.3 };
  const shot = await warm.session.send("Page.captureScreenshot", {
    format: "png",
    captureBeyondViewport: true,
    clip,
  });
  const pdf = await printPage(warm, day);
  return { key: job.key, pdf, thumbnail: Buffer.from(shot.data, "base64"), overflow };
}

async function printQueue(
  queue: PrintJob[],
  { css, language, day }: PrintOptions,
  done: (printed: Printed) => void,
): Promise<void> {
  let browser: Browser | undefined;
  let warm: WarmPage | undefined;
  const again = new Set<string>();
  try {
    for (let job = queue.shift(); job; job = queue.shift()) {
      try {
        browser ??= await openBrowser();
        warm ??= await warmPage(browser, css, language);
        done(await within(printOne(warm, job, day), warm));
      } catch (error) {
        if (error instanceof Stop) throw error;
        const [why = ""] = String(error instanceof Error ? error.message : error).split("\n");
        if (again.has(job.key)) {
          throw new Stop(
            3,
            `The browser failed twice at ${job.key}: ${why}.`,
            "Run again; if it stays, name another Chromium in PUPPETEER_EXECUTABLE_PATH.",
          );
        }
        again.add(job.key);
        queue.unshift(job);
        if (browser) await closeBrowser(browser);
        browser = undefined;
        warm = undefined;
      }
    }
  } finally {
    if (browser) await closeBrowser(browser);
  }
}

/** Prints all jobs, two browsers side by side when there are many, each job tried twice; the result is in the jobs' order. */
export async function printSheets(
  jobs: readonly PrintJob[],
  options: PrintOptions,
): Promise<Printed[]> {
  const queue = [...jobs];
  const results = new Map<string, Printed>();
  const lanes = jobs.length > 20 ? 2 : 1;
  const keep = (printed: Printed) => void results.set(printed.key, printed);
  const ended = await Promise.allSettled(
    Array.from({ length: lanes }, () => printQueue(queue, options, keep)),
  );
  for (const lane of ended) if (lane.status === "rejected") throw lane.reason;
  return jobs.flatMap(({ key }) => results.get(key) ?? []);
}
