import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readManifest } from "../../lib/publish/manifest.ts";
import { places } from "../../lib/setup/places.mjs";
import { table } from "./tools/table.ts";
import { median, treeCost } from "./tools/tree-cost.ts";

const folder = mkdtempSync(join(tmpdir(), "trayleaf-bench-"));
const library = join(folder, "library");
const out = join(folder, "dist");
cpSync("content", library, { recursive: true });
const words = ["lib/setup/trayleaf.mjs", "build", "--library", library, "--out", out];
const build = () => treeCost(process.execPath, [...words, "--today", "2026-11-25"]);
const prints = () => readManifest(out)?.prints ?? {};
const rounds = Number(process.argv[2] ?? 5);

const clean = await build();
const unchanged: number[] = [];
const hashing: number[] = [];
const hasher = `
  import { hashInputs } from ${JSON.stringify(join(places.root, "lib/setup/unchanged.mjs"))};
  hashInputs({ root: ${JSON.stringify(places.root)}, library: ${JSON.stringify(library)}, argv: [] });`;
for (let round = 0; round < rounds; round++) {
  const again = await build();
  if (!again.said.includes("Nothing changed."))
    throw new Error("An unchanged build was made again");
  unchanged.push(again.cpu);
  hashing.push((await treeCost(process.execPath, ["--input-type=module", "-e", hasher])).cpu);
}

const part = join(library, process.argv[3] ?? "systems/pebblefin/plates/ankle-tip-hook.yaml");
const text = readFileSync(part, "utf8");
writeFileSync(part, text.replace(/^(name: )(.+)$/m, "$1$2 II"));
if (readFileSync(part, "utf8") === text) throw new Error(`${part} has no name to change`);
const before = prints();
const changed = await build();
const after = prints();
const files = Object.keys(after);
const anew = files.filter((file) => after[file]?.from !== before[file]?.from);
const reported = Number(/(\d+) of \d+ files printed anew/.exec(changed.said)?.[1] ?? Number.NaN);
rmSync(folder, { recursive: true, force: true });

process.stdout.write(
  `${table(
    ["", "wall s", "CPU s"],
    [
      ["clean build", clean.wall, clean.cpu],
      [
        `one part changed: ${anew.length} of ${files.length} files show it`,
        changed.wall,
        changed.cpu,
      ],
      ["nothing changed", "", median(unchanged)],
      ["Node and hashing the inputs", "", median(hashing)],
    ],
  )}\n${JSON.stringify({
    files: files.length,
    show_it: anew.length,
    printed_anew: reported,
    cpu_unchanged_vs_hashing: Math.round((median(unchanged) / median(hashing)) * 100) / 100,
    cpu_changed_vs_clean: Math.round((changed.cpu / clean.cpu) * 1000) / 1000,
  })}\n`,
);
