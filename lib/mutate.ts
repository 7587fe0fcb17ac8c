import { fork } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Bench, openBench } from "./bench.ts";
import { type KeptMutation, MutationRun, type Outcome } from "./model/mutation.ts";
import { Stop } from "./model/stop.ts";
import { survives, tally } from "./mutate/tally.ts";
import { readLibrary } from "./read/read-library.ts";
import { mutationText, survivorLines } from "./report/mutation-text.ts";

/** What the command line asks of a run: every `sample`-th mutant of a kind, survivors named, the run kept in a file, or the share of a helper. */
export type MutateOptions = {
  readonly library: string;
  readonly today?: string;
  readonly sample: number;
  readonly survivors: boolean;
  readonly keep?: string;
  readonly share?: string;
};

type Told = readonly [index: number, outcome: Omit<Outcome, "mutant">];

const lib = fileURLToPath(new URL("./", import.meta.url));
const judging = ["model", "read", "validate", "resolve", "derive", "check", "compose", "mutate"];
const helpers = 2;

/** The first 8 hex digits of a SHA-256 over what a library states and over the code that judges it. */
function mutationFingerprints(library: string): Pick<MutationRun, "library" | "rules"> {
  const digest = (texts: readonly string[]): string =>
    createHash("sha256").update(texts.join("\n")).digest("hex").slice(0, 8);
  const { sources } = readLibrary(library);
  const files = judging.flatMap((stage) =>
    readdirSync(join(lib, stage), { recursive: true, encoding: "utf8" })
      .filter((name) => name.endsWith(".ts"))
      .sort()
      .map((name) => readFileSync(join(lib, stage, name), "utf8")),
  );
  return {
    library: digest(sources.map(({ file, data }) => `${file} ${JSON.stringify(data)}`)),
    rules: digest(files),
  };
}

/** The run that is kept with the project, if one is, and whether it is as new as this library and these rules. */
export function keptMutation(library: string): KeptMutation | undefined {
  const file = join(lib, "mutate/measured.json");
  if (!existsSync(file)) return undefined;
  const run = MutationRun.parse(JSON.parse(readFileSync(file, "utf8")));
  const now = mutationFingerprints(library);
  return { run, isLibrary: run.library === now.library, areRules: run.rules === now.rules };
}

/** The indices of every `sample`-th mutant of each kind, the first of each among them. */
function sampled({ mutants }: Bench, sample: number): readonly number[] {
  const met = new Map<string, number>();
  return mutants.flatMap(({ kind }, index) => {
    const before = met.get(kind) ?? 0;
    met.set(kind, before + 1);
    return before % sample === 0 ? [index] : [];
  });
}

function judgeShare(bench: Bench, indices: readonly number[], share: number): readonly Told[] {
  return indices
    .filter((_, place) => place % helpers === share)
    .flatMap((index): readonly Told[] => {
      const mutant = bench.mutants[index];
      if (!mutant) return [];
      const { mutant: _, ...outcome } = bench.judge(mutant);
      return [[index, outcome]];
    });
}

/** The share of the mutants that a process of its own judges; it runs this command again and sends what it found. */
function helped({ library, today, sample }: MutateOptions): Promise<readonly Told[]> {
  const day = today === undefined ? [] : ["--today", today];
  const words = ["mutate", "--library", library, ...day, "--sample", String(sample)];
  return new Promise((done, failed) => {
    let told: readonly Told[] | undefined;
    const child = fork(process.argv[1] ?? "", [...words, "--share", "1"]);
    child.on("message", (message) => {
      told = message as readonly Told[];
    });
    child.on("close", () =>
      told ? done(told) : failed(new Stop(5, "A helper ended before its work.", "Run again.")),
    );
  });
}

/** Judges the mutants of a library on two processes, prints the table and a last line of JSON; the exit code is 0 whatever survives. */
export async function mutate(options: MutateOptions): Promise<number> {
  const { library, today, sample, keep } = options;
  if (!Number.isInteger(sample) || sample < 1)
    throw new Stop(
      2,
      "Expected --sample as a whole number from 1.",
      "--sample 50 takes every 50th.",
    );
  if (options.share !== undefined) {
    const bench = openBench(library, today);
    const told = judgeShare(bench, sampled(bench, sample), Number(options.share));
    await new Promise((sent) => process.send?.(told, sent));
    process.disconnect?.();
    return 0;
  }
  const others = helped(options);
  const bench = openBench(library, today);
  const own = judgeShare(bench, sampled(bench, sample), 0);
  const outcomes = [...own, ...(await others)]
    .sort(([a], [b]) => a - b)
    .flatMap(([index, outcome]): readonly Outcome[] => {
      const mutant = bench.mutants[index];
      return mutant ? [{ mutant, ...outcome }] : [];
    });
  const run = tally(outcomes, { ...mutationFingerprints(library), sample });
  const named = options.survivors ? survivorLines(outcomes.filter(survives)) : [];
  process.stdout.write(`${[...named, mutationText(run)].join("\n")}`);
  if (keep !== undefined) {
    mkdirSync(dirname(keep), { recursive: true });
    writeFileSync(keep, `${JSON.stringify(run, undefined, 2)}\n`);
  }
  return 0;
}
