import type { PrintFacts } from "../model/built.ts";
import type { PrintJob } from "./print-job.ts";
import { fetchJobs, fitPack, raiseJob, showJobs } from "./show-jobs.ts";
import type { WarmPage } from "./warm-page.ts";

const perMm = 96 / 25.4;
const thumbnailScale = 0.3;

/** Jobs as the browser gives them: one PDF with its clock and counters, and of each job the picture and what runs over. */
export type RawPrint = {
  readonly pdf: Uint8Array;
  readonly seen: readonly {
    readonly thumbnail?: Uint8Array;
    readonly overflow: PrintFacts["overflow"];
  }[];
};

async function photograph(
  { session }: WarmPage,
  [width, height]: PrintJob["paper"],
): Promise<Uint8Array> {
  const { data } = await session.send("Page.captureScreenshot", {
    format: "png",
    captureBeyondViewport: true,
    clip: { x: 0, y: 0, width: width * perMm, height: height * perMm, scale: thumbnailScale },
  });
  return Buffer.from(data, "base64");
}

/** Shows jobs in a warm page and prints them together as one tagged PDF with an outline. */
export async function printTogether(warm: WarmPage, jobs: readonly PrintJob[]): Promise<RawPrint> {
  await showJobs(warm, jobs);
  const seen: RawPrint["seen"][number][] = [];
  for (const [index, { paper, thumbnail }] of jobs.entries())
    seen.push(
      thumbnail
        ? { overflow: await raiseJob(warm, index), thumbnail: await photograph(warm, paper) }
        : { overflow: [] },
    );
  if (jobs.some(({ pages }) => pages > 1)) await fitPack(warm);
  else if (warm.shown) await fetchJobs(warm);
  const { data } = await warm.session.send("Page.printToPDF", {
    preferCSSPageSize: true,
    printBackground: true,
    generateTaggedPDF: true,
    generateDocumentOutline: true,
  });
  return { pdf: Buffer.from(data, "base64"), seen };
}
