import type { PrintFacts } from "../model/built.ts";
import { closeness, fitSheets } from "./fit-sheets.ts";
import type { PrintJob } from "./print-job.ts";
import type { WarmPage } from "./warm-page.ts";

/** Puts jobs into the page, one after the other. Where one wants a thumbnail or is a pack, the screen is made to show what
 * print would, so that sheets can be fitted. */
export async function showJobs(
  warm: WarmPage,
  jobs: readonly Pick<PrintJob, "html" | "pages" | "thumbnail">[],
): Promise<void> {
  const shown = jobs.some(({ thumbnail, pages }) => thumbnail || pages > 1);
  if (warm.shown !== shown) await warm.page.emulateMediaType(shown ? "print" : undefined);
  warm.shown = shown;
  const html = jobs.map(({ html, pages }) =>
    pages === 1 ? `<div class="job">${html}</div>` : html,
  );
  await warm.page.evaluate((body) => {
    document.body.innerHTML = body;
  }, html.join(""));
}

/** Lays out one of the jobs alone on the screen, so that its picture depends on no other, sets it as close as it must be, and
 * tells what runs over of every region marked data-fit even so. */
export async function raiseJob({ page }: WarmPage, index: number): Promise<PrintFacts["overflow"]> {
  await page.evaluate((raised) => {
    for (const [at, job] of document.querySelectorAll(".job").entries())
      job.classList.toggle("put-away", at !== raised);
  }, index);
  return page.evaluate(fitSheets, ".job:not(.put-away)", closeness);
}

/** Sets every sheet of a pack as close as it is set alone. */
export async function fitPack({ page }: WarmPage): Promise<void> {
  await page.evaluate(fitSheets, "body", closeness);
}

/** Lays out all jobs again. */
export function fetchJobs({ page }: WarmPage): Promise<void> {
  return page.evaluate(() => {
    for (const job of document.querySelectorAll(".job")) job.classList.remove("put-away");
  });
}
