import { greyObjects } from "./grey-objects.ts";
import { packObjects } from "./pack-objects.ts";
import { type PdfBook, pdfBook } from "./pdf-book.ts";
import { pdfObjects } from "./pdf-objects.ts";
import type { Printed, PrintJob } from "./print-job.ts";
import type { RawPrint } from "./print-together.ts";
import { readObjects } from "./read-objects.ts";
import { takePages } from "./take-pages.ts";

const points = 72 / 25.4;

/** Takes the files of jobs out of the PDF in which they were printed together, the same bytes each time, and reads back of
 * each its pages, its paper and its texts, one by one as they are asked for. Undefined when the PDF has not the pages that
 * they should have: then nobody knows which are whose. A job alone gets all pages. Throws when the PDF cannot be looked into. */
export function readBack(
  raw: RawPrint,
  jobs: readonly PrintJob[],
  day: string,
): Iterable<Printed> | undefined {
  const book = pdfBook(pdfObjects(raw.pdf));
  const wanted = jobs.reduce((sum, { pages }) => sum + pages, 0);
  if (jobs.length > 1 && book.pages.length !== wanted) return undefined;
  return filesOf(book, raw.seen, jobs, day);
}

function* filesOf(
  book: PdfBook,
  seen: RawPrint["seen"],
  jobs: readonly PrintJob[],
  day: string,
): Generator<Printed> {
  let from = 0;
  for (const [index, job] of jobs.entries()) {
    const to = jobs.length > 1 ? from + job.pages : book.pages.length;
    const objects = takePages(book, from, to, { ...job, day });
    from = to;
    const { pages, size, missing } = readObjects(objects, job);
    const off = Math.max(...job.paper.map((side, at) => Math.abs((size[at] ?? 0) - side * points)));
    const paper = off > 1 ? [{ what: "paper", by: Math.round((off / points) * 10) / 10 }] : [];
    const { thumbnail, overflow = [] } = seen[index] ?? {};
    yield {
      file: job.file,
      pdf: packObjects(objects),
      ...(job.grey ? { grey: packObjects(greyObjects(objects)) } : {}),
      ...(thumbnail ? { thumbnail } : {}),
      facts: { pages, overflow: [...overflow, ...paper], missing },
    };
  }
}
