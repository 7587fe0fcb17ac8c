import type { PrintFacts } from "../model/built.ts";
import type { PrintJob } from "./print-job.ts";
import { show, type WarmPage } from "./warm-page.ts";

const perMm = 96 / 25.4;
const thumbnailScale = 0.3;

/** A job as the browser gives it: the PDF with its clock and counters, the picture, what runs over. */
export type RawPrint = {
  readonly pdf: Uint8Array;
  readonly thumbnail?: Uint8Array;
  readonly overflow: PrintFacts["overflow"];
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

/** Shows one job in a warm page and prints it as a tagged PDF with an outline. */
export async function printOne(warm: WarmPage, job: PrintJob): Promise<RawPrint> {
  const overflow = await show(warm, job);
  const thumbnail = job.thumbnail ? await photograph(warm, job.paper) : undefined;
  const { data } = await warm.session.send("Page.printToPDF", {
    preferCSSPageSize: true,
    printBackground: true,
    generateTaggedPDF: true,
    generateDocumentOutline: true,
  });
  return { pdf: Buffer.from(data, "base64"), ...(thumbnail ? { thumbnail } : {}), overflow };
}
