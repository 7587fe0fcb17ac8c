import { normalisePdf } from "./normalise-pdf.ts";
import type { Printed, PrintJob } from "./print-job.ts";
import type { RawPrint } from "./print-one.ts";
import { verifyPdf } from "./verify-pdf.ts";

const points = 72 / 25.4;

/** Makes a print the same bytes each time, and reads back its pages, its paper and its texts. */
export async function readBack(raw: RawPrint, job: PrintJob, day: string): Promise<Printed> {
  const pdf = normalisePdf(raw.pdf, day);
  const { pages, size, missing } = await verifyPdf(pdf, job.texts);
  const off = Math.max(...job.paper.map((side, at) => Math.abs((size[at] ?? 0) - side * points)));
  const paper = off > 1 ? [{ what: "paper", by: Math.round((off / points) * 10) / 10 }] : [];
  return {
    file: job.file,
    pdf,
    ...(raw.thumbnail ? { thumbnail: raw.thumbnail } : {}),
    facts: { pages, overflow: [...raw.overflow, ...paper], missing },
  };
}
