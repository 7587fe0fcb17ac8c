import type { PrintJob } from "./print-job.ts";

/** More sheets than this in one print save little more time, and one that fails takes all others with it. */
const most = 12;

const idsOf = ({ html }: PrintJob): readonly string[] =>
  [...html.matchAll(/\sid="([^"]*)"/g)].map(([, id = ""]) => id);

/** Parts jobs into groups that are printed at once, the longest first: packs alone, sheets together as long as no id stands in two of them. */
export function groupJobs(jobs: readonly PrintJob[], lanes: number): (readonly PrintJob[])[] {
  const packs = jobs.filter(({ pages }) => pages > 1).sort((a, b) => b.pages - a.pages);
  const sheets = jobs.filter(({ pages }) => pages === 1);
  const size = Math.min(most, Math.ceil(sheets.length / Math.max(1, lanes)));
  const groups: {
    readonly jobs: PrintJob[];
    readonly ids: Set<string>;
    readonly thumbnail: boolean;
  }[] = [];
  for (const job of sheets) {
    const ids = idsOf(job);
    const open = groups.find(
      (group) =>
        group.jobs.length < size &&
        group.thumbnail === job.thumbnail &&
        !ids.some((id) => group.ids.has(id)),
    );
    const group = open ?? { jobs: [], ids: new Set<string>(), thumbnail: job.thumbnail };
    if (!open) groups.push(group);
    group.jobs.push(job);
    for (const id of ids) group.ids.add(id);
  }
  return [...packs.map((pack) => [pack]), ...groups.map((group) => group.jobs)];
}
