import type { Browser } from "puppeteer";
import { Stop } from "../model/stop.ts";
import { endBrowser, openBrowser } from "./open-browser.ts";
import type { Printed, PrintJob, PrintOptions } from "./print-job.ts";
import { printOne } from "./print-one.ts";
import { readBack } from "./read-back.ts";
import { type WarmPage, warmPage } from "./warm-page.ts";
import { whileAlive } from "./while-alive.ts";

const firstLine = (error: unknown): string =>
  String(error instanceof Error ? error.message : error).split("\n")[0] ?? "";

/** Takes jobs from the queue until it is empty and prints them in one browser; a browser that fails is replaced once for each job. */
export async function printLane(
  queue: PrintJob[],
  options: PrintOptions,
  done: (printed: Printed) => void,
): Promise<void> {
  let browser: Browser | undefined;
  let warm: WarmPage | undefined;
  const close = async (): Promise<void> => {
    if (browser) await endBrowser(browser);
    browser = undefined;
    warm = undefined;
  };
  const print = async (job: PrintJob): Promise<Printed> => {
    browser ??= await openBrowser();
    warm ??= await whileAlive(warmPage(browser, options), browser);
    const raw = await whileAlive(printOne(warm, job), browser, warm.page);
    return readBack(raw, job, options.day);
  };
  try {
    for (let job = queue.shift(); job; job = queue.shift()) {
      const { file } = job;
      const printed = await print(job).catch(async (error: unknown) => {
        if (error instanceof Stop) throw error;
        await close();
        return print(job).catch((again: unknown) => {
          if (again instanceof Stop) throw again;
          throw new Stop(
            3,
            `The browser failed twice at ${file}: ${firstLine(error)}; ${firstLine(again)}.`,
            "Run again; if it stays, name another Chromium in PUPPETEER_EXECUTABLE_PATH.",
          );
        });
      });
      done(printed);
    }
  } finally {
    await close();
  }
}
