import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { benchJobs, type Given } from "./tools/bench-jobs.ts";
import { table } from "./tools/table.ts";
import { programCost } from "./tools/tree-cost.ts";

const asked = process.argv.slice(2).map(Number);
const counts = asked.length > 0 ? asked : [10, 100, 1_000, 5_000];
const rows: (readonly (string | number)[])[] = [];
for (const n of counts) {
  const folder = mkdtempSync(join(tmpdir(), "trayleaf-bench-"));
  const given: Given = { ...benchJobs(n), out: join(folder, "out") };
  const file = join(folder, "given.json");
  mkdirSync(given.out);
  writeFileSync(file, JSON.stringify(given));
  const { wall, cpu, peak } = await programCost(["tests/bench/tools/contenders/trayleaf.ts", file]);
  rows.push([String(n), wall, cpu, (cpu * 1000) / n, peak]);
  rmSync(folder, { recursive: true, force: true });
}
process.stdout.write(
  `${table(["cards", "wall s", "CPU s", "CPU ms/card", "peak MiB"], rows)}\n${JSON.stringify(
    rows.map(([n, wall, cpu, , peak]) => ({ n: Number(n), wall, cpu, peak_mib: peak })),
  )}\n`,
);
