import { setImmediate } from "node:timers/promises";
import type { Browser } from "puppeteer";
import { Stop } from "../model/stop.ts";
import { endBrowser, openBrowser } from "./open-browser.ts";
import type { Printed, PrintJob, PrintOptions } from "./print-job.ts";
import { printTogether } from "./print-together.ts";
import { readBack } from "./read-back.ts";
import { type WarmPage, warmPage } from "./warm-page.ts";
import { whileAlive } from "./while-alive.ts";

const firstLine = (error: unknown): string =>
  String(error instanceof Error ? error.message : error).split("\n")[0] ?? "";

/** A browser that fails again so soon after it was replaced, milliseconds, will go on failing. */
const calm = 60_000;

/** Reads files back and hands them over, while the browser prints the next: between two files it gets its turn. */
async function handOver(files: Iterable<Printed>, done: (printed: Printed) => void): Promise<void> {
  for (const printed of files) {
    done(printed);
    await setImmediate();
  }
}

/** Takes groups of jobs from the queue until it is empty and prints each group at once in one browser; a browser that fails is
 * replaced, but not twice for one group, nor twice within a minute. A group that does not come out on the pages it should is printed job by job. */
export async function printLane(
  queue: (readonly PrintJob[])[],
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
  const print = async (jobs: readonly PrintJob[]): Promise<Iterable<Printed> | undefined> => {
    browser ??= await openBrowser();
    warm ??= await whileAlive(warmPage(browser, options), browser);
    const raw = await whileAlive(printTogether(warm, jobs), browser, warm.page);
    return readBack(raw, jobs, options.day);
  };
  let fault = { at: Number.NEGATIVE_INFINITY, why: "" };
  const twice = (jobs: readonly PrintJob[], error: unknown): Stop =>
    error instanceof Stop
      ? error
      : new Stop(
          3,
          `The browser failed twice at ${jobs.map(({ file }) => file).join(", ")}: ${fault.why}; ${firstLine(error)}.`,
          "Run again; if it stays, name another Chromium in PUPPETEER_EXECUTABLE_PATH.",
        );
  const tried = (jobs: readonly PrintJob[]): Promise<Iterable<Printed> | undefined> =>
    print(jobs).catch(async (error: unknown) => {
      if (error instanceof Stop || performance.now() - fault.at < calm) throw twice(jobs, error);
      await close();
      fault = { at: performance.now(), why: firstLine(error) };
      return print(jobs).catch((again: unknown) => {
        throw twice(jobs, again);
      });
    });
  let reading = Promise.resolve();
  try {
    for (let jobs = queue.shift(); jobs; jobs = queue.shift()) {
      const together = await tried(jobs);
      await reading;
      if (!together) queue.unshift(...jobs.map((job) => [job]));
      reading = handOver(together ?? [], done);
      reading.catch(() => undefined); // It is told when it is waited for.
    }
    await reading;
  } finally {
    await reading.catch(() => undefined);
    await close();
  }
}
