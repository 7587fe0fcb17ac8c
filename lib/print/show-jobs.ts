import type { PrintFacts } from "../model/built.ts";
import type { PrintJob } from "./print-job.ts";
import type { WarmPage } from "./warm-page.ts";

/** Puts jobs into the page, one after the other. Where one wants a thumbnail, the screen is made to show what print would. */
export async function showJobs(
  warm: WarmPage,
  jobs: readonly Pick<PrintJob, "html" | "pages" | "thumbnail">[],
): Promise<void> {
  const shown = jobs.some(({ thumbnail }) => thumbnail);
  if (warm.shown !== shown) await warm.page.emulateMediaType(shown ? "print" : undefined);
  warm.shown = shown;
  const html = jobs.map(({ html, pages }) =>
    pages === 1 ? `<div class="job">${html}</div>` : html,
  );
  await warm.page.evaluate((body) => {
    document.body.innerHTML = body;
  }, html.join(""));
}

/** Lays out one of the jobs alone on the screen, so that its picture depends on no other, and measures what runs over of every
 * region marked data-fit, in millimetres. */
export function raiseJob({ page }: WarmPage, index: number): Promise<PrintFacts["overflow"]> {
  return page.evaluate((raised) => {
    const perMm = 96 / 25.4;
    const slack = 1.5;
    const jobs = [...document.querySelectorAll(".job")];
    for (const [at, job] of jobs.entries()) job.classList.toggle("put-away", at !== raised);
    return [...(jobs[raised]?.querySelectorAll<HTMLElement>("[data-fit]") ?? [])].flatMap(
      (region) => {
        const by = Math.max(
          region.scrollHeight - region.clientHeight,
          region.scrollWidth - region.clientWidth,
        );
        return by > slack
          ? [{ what: region.dataset["fit"] ?? "region", by: Math.round((by / perMm) * 10) / 10 }]
          : [];
      },
    );
  }, index);
}

/** Lays out all jobs again. */
export function fetchJobs({ page }: WarmPage): Promise<void> {
  return page.evaluate(() => {
    for (const job of document.querySelectorAll(".job")) job.classList.remove("put-away");
  });
}
