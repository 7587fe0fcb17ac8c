import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { systemBrowsers } from "../../lib/setup/system-browsers.mjs";
import { readWithPdfjs } from "../print/read-with-pdfjs.ts";
import { benchJobs, type Given } from "./tools/bench-jobs.ts";
import { onDemand } from "./tools/on-demand.ts";
import { table } from "./tools/table.ts";
import { type Cost, median, programCost } from "./tools/tree-cost.ts";

const [count = "100", rounds = Number(count) > 100 ? "1" : "3"] = process.argv.slice(2);
const n = Number(count);
const folder = mkdtempSync(join(tmpdir(), "trayleaf-bench-"));
const { jobs, css } = benchJobs(n);
const bare = (text: string): string => text.normalize("NFKC").replace(/\s+/g, "");

/** A browser of this system with a window, as puppeteer opens by default; we print with its shell, where there is one. */
const wholeBrowser = systemBrowsers({ path: process.env["PATH"] ?? "" }).find(
  (path) => existsSync(path) && !/headless/.test(path),
);

type Contender = {
  readonly name: string;
  readonly words: readonly string[];
  readonly env?: Readonly<Record<string, string>>;
};
const program = (name: string) => `tests/bench/tools/contenders/${name}.ts`;
const same = "naive puppeteer, our browser";
const whole = "naive puppeteer, whole browser";
const naive = wholeBrowser ? whole : same;
const typst = onDemand("@myriaddreamin/typst-ts-node-compiler", "0.7.0");
const contenders: readonly Contender[] = [
  { name: "trayleaf", words: [program("trayleaf")] },
  { name: "trayleaf, with fit and thumbnail", words: [program("trayleaf"), "shown"] },
  { name: same, words: [program("naive")] },
  ...(wholeBrowser
    ? [
        {
          name: whole,
          words: [program("naive")],
          env: { PUPPETEER_EXECUTABLE_PATH: wholeBrowser },
        },
      ]
    : []),
  ...(typst ? [{ name: "typst", words: [program("typst"), typst] }] : []),
];
if (!typst) process.stdout.write("typst could not be installed; its columns are missing.\n");

const outOf = (name: string): string => join(folder, name.replaceAll(/\W+/g, "-"));
const givenOf = (name: string): string => `${outOf(name)}.json`;
for (const { name } of contenders) {
  const given: Given = { jobs, css, out: outOf(name) };
  mkdirSync(given.out);
  writeFileSync(givenOf(name), JSON.stringify(given));
}

const costs = new Map<string, Cost[]>();
for (let round = 0; round < Number(rounds); round++)
  for (const {
    name,
    words: [file = "", ...more],
    env,
  } of contenders) {
    const cost = await programCost([file, givenOf(name), ...more], env);
    costs.set(name, [...(costs.get(name) ?? []), cost]);
  }
const floorOf = join(folder, "floor.json");
writeFileSync(floorOf, JSON.stringify({ jobs: jobs.slice(0, 50), css, out: folder }));
const { main: floor, whole: printing } = JSON.parse(
  (await programCost([program("floor"), floorOf])).said,
) as { readonly main: number; readonly whole: number };

for (const { name } of contenders)
  for (const { file, texts } of jobs.filter((_, index) => index % Math.ceil(n / 20) === 0)) {
    const { text } = await readWithPdfjs(readFileSync(join(outOf(name), file)));
    const lost = texts.filter((wanted) => !bare(text).includes(bare(wanted)));
    if (lost.length > 0) throw new Error(`${name} lost "${lost[0]}" in ${file}`);
  }
const bytesOf = (name: string): number =>
  readdirSync(outOf(name))
    .filter((file) => file.endsWith(".pdf"))
    .reduce((sum, file) => sum + statSync(join(outOf(name), file)).size, 0);
const of = (name: string, what: keyof Cost): number =>
  median((costs.get(name) ?? []).map((cost) => cost[what]));
process.stdout.write(
  `${table(
    ["", "wall s", "CPU s", "CPU ms/card", "x floor", "KB/card", "peak MiB"],
    contenders.map(({ name }) => [
      name,
      of(name, "wall"),
      of(name, "cpu"),
      (of(name, "cpu") * 1000) / n,
      of(name, "cpu") / n / floor,
      bytesOf(name) / 1024 / n,
      of(name, "peak"),
    ]),
  )}\nChromium's own print time: ${(floor * 1000).toFixed(1)} ms of its main thread a card, ${(printing * 1000).toFixed(1)} ms in all its processes (one of them writes the PDF).\n`,
);
const ratio = (value: number) => Math.round(value * 1000) / 1000;
const us = "trayleaf";
process.stdout.write(
  `${JSON.stringify({
    n,
    rounds: Number(rounds),
    wall_vs_naive: ratio(of(us, "wall") / of(naive, "wall")),
    cpu_vs_floor: ratio(of(us, "cpu") / n / floor),
    cpu_vs_browser: ratio(of(us, "cpu") / n / printing),
    ...(typst ? { cpu_vs_typst: ratio(of(us, "cpu") / of("typst", "cpu")) } : {}),
    bytes_vs_raw: ratio(bytesOf(us) / bytesOf(naive)),
    wall_vs_naive_same_browser: ratio(of(us, "wall") / of(same, "wall")),
    wall_vs_naive_shown: ratio(of("trayleaf, with fit and thumbnail", "wall") / of(naive, "wall")),
    cpu_vs_floor_shown: ratio(of("trayleaf, with fit and thumbnail", "cpu") / n / floor),
  })}\n`,
);
rmSync(folder, { recursive: true, force: true });
