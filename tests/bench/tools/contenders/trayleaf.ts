import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { printJobs } from "../../../../lib/print/print-jobs.ts";
import type { Given } from "../bench-jobs.ts";

const [file = "", shown = ""] = process.argv.slice(2);
const { jobs, css, out }: Given = JSON.parse(readFileSync(file, "utf8"));

const asked = jobs.map((job) => ({ ...job, thumbnail: shown === "shown" }));
await printJobs(asked, { css, language: "en", day: "2026-11-25" }, (printed) => {
  const { pages, missing } = printed.facts;
  if (pages !== 1 || missing.length > 0) throw new Error(`${printed.file} is not as it must be`);
  writeFileSync(join(out, printed.file), printed.pdf);
  if (printed.thumbnail) writeFileSync(join(out, `${printed.file}.png`), printed.thumbnail);
});
