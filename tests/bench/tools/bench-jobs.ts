import { join } from "node:path";
import { checkLibrary } from "../../../lib/index.ts";
import { expectedTexts } from "../../../lib/print/expected-texts.ts";
import type { PrintJob } from "../../../lib/print/print-job.ts";
import { printStyles } from "../../../lib/print/print-styles.ts";
import { paperStyles } from "../../../lib/site/paper-styles.ts";
import { renderSheet } from "../../../lib/site/render-sheet.ts";

const fonts = join("node_modules", "@fontsource", "atkinson-hyperlegible-next", "files");

/** As many distinct cards as asked for: the demo's sheets of all kinds in turn, each with a card id of its own, and their styles. */
export function benchJobs(count: number): {
  readonly jobs: readonly PrintJob[];
  readonly css: string;
} {
  const { sheets = [] } = checkLibrary("content", "2026-11-25");
  if (sheets.length === 0)
    throw new Error("The demo library has a stop: npm run trayleaf -- check");
  const stride = 37;
  const jobs = Array.from({ length: count }, (_, index): PrintJob => {
    const demo = sheets[(index * stride) % sheets.length];
    if (!demo) throw new Error("No sheet");
    const card = `${demo.identity.card}-${String(index).padStart(4, "0")}`;
    const sheet = { ...demo, identity: { ...demo.identity, card } };
    return {
      file: `${index}.pdf`,
      title: `${sheet.title} (${card})`,
      html: renderSheet(sheet),
      paper: [sheet.format.width, sheet.format.height],
      pages: 1,
      texts: expectedTexts(sheet),
      thumbnail: true,
    };
  });
  return { jobs, css: `${paperStyles()}${printStyles(join("templates", "style"), fonts)}` };
}

/** What a contender is given in a file: the jobs, their styles, and where to write. */
export type Given = ReturnType<typeof benchJobs> & { readonly out: string };
