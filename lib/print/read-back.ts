import { packObjects } from "./pack-objects.ts";
import { pdfObjects } from "./pdf-objects.ts";
import type { Printed, PrintJob } from "./print-job.ts";
import type { RawPrint } from "./print-one.ts";
import { readObjects } from "./read-objects.ts";
import { settleObjects } from "./settle-objects.ts";

const points = 72 / 25.4;

/** Makes a print the same bytes each time, and reads back its pages, its paper and its texts. */
export function readBack(raw: RawPrint, job: PrintJob, day: string): Printed {
  const objects = pdfObjects(raw.pdf);
  const { pages, size, missing } = readObjects(objects, job);
  const off = Math.max(...job.paper.map((side, at) => Math.abs((size[at] ?? 0) - side * points)));
  const paper = off > 1 ? [{ what: "paper", by: Math.round((off / points) * 10) / 10 }] : [];
  return {
    file: job.file,
    pdf: packObjects(settleObjects(objects, day)),
    ...(raw.thumbnail ? { thumbnail: raw.thumbnail } : {}),
    facts: { pages, overflow: [...raw.overflow, ...paper], missing },
  };
}
