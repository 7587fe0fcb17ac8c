import { groupJobs } from "./group-jobs.ts";
import type { Printed, PrintJob, PrintOptions } from "./print-job.ts";
import { printLane } from "./print-lane.ts";

const manyPages = 20;

/** Prints all jobs, the longest first, each tried twice; `done` gets each as it is ready, in no promised order. Stops with 3 when the browser fails. */
export async function printJobs(
  jobs: readonly PrintJob[],
  options: PrintOptions,
  done: (printed: Printed) => void,
): Promise<void> {
  const pages = jobs.reduce((sum, job) => sum + job.pages, 0);
  const lanes = Math.min(jobs.length, options.lanes ?? (pages > manyPages ? 2 : 1));
  const queue = groupJobs(jobs, lanes);
  const lane = async (): Promise<void> => {
    try {
      await printLane(queue, options, done);
    } catch (error) {
      queue.length = 0;
      throw error;
    }
  };
  const ended = await Promise.allSettled(Array.from({ length: lanes }, lane));
  for (const one of ended) if (one.status === "rejected") throw one.reason;
}
