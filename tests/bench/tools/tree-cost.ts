import { spawn } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { asJavaScript } from "../../../lib/setup/as-javascript.mjs";
import { places } from "../../../lib/setup/places.mjs";

/** What a program cost with all its processes: seconds on the clock, seconds of processor time, the most memory at once in MiB. */
export type Cost = { readonly wall: number; readonly cpu: number; readonly peak: number };

type Seen = { readonly parent: number; readonly ticks: number; readonly memory: number };

const perSecond = 100;
const pageKib = 4;

function seen(pid: string): Seen | undefined {
  try {
    const text = readFileSync(`/proc/${pid}/stat`, "utf8");
    const fields = text
      .slice(text.lastIndexOf(")") + 2)
      .split(" ")
      .map(Number);
    const at = (index: number) => fields[index] ?? 0;
    return {
      parent: at(1),
      ticks: at(11) + at(12) + at(13) + at(14),
      memory: (at(21) * pageKib) / 1024,
    };
  } catch {
    return undefined;
  }
}

function tree(root: number): readonly Seen[] {
  const all = new Map(
    readdirSync("/proc")
      .filter((name) => /^\d+$/.test(name))
      .flatMap((name): [number, Seen][] => {
        const one = seen(name);
        return one ? [[Number(name), one]] : [];
      }),
  );
  const own = new Set([root]);
  for (let size = 0; size !== own.size; ) {
    size = own.size;
    for (const [pid, { parent }] of all) if (own.has(parent)) own.add(pid);
  }
  return [...own].flatMap((pid) => all.get(pid) ?? []);
}

/** Processor seconds that a process and all below it have used, those included that have ended. */
export const secondsBelow = (root: number): number =>
  tree(root).reduce((sum, { ticks }) => sum + ticks, 0) / perSecond;

const reaped = (): number => {
  const text = readFileSync("/proc/self/stat", "utf8");
  const fields = text
    .slice(text.lastIndexOf(")") + 2)
    .split(" ")
    .map(Number);
  return (fields[13] ?? 0) + (fields[14] ?? 0);
};

/** Runs a program and measures it with all its processes, by looking at /proc (Linux) ten times a second; gives also what it
 * printed. Throws when it fails. */
export function treeCost(
  command: string,
  words: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<Cost & { readonly said: string }> {
  return new Promise((done, fail) => {
    const before = reaped();
    const from = performance.now();
    const child = spawn(command, words, {
      stdio: ["ignore", "pipe", "inherit"],
      env: { ...process.env, ...env },
    });
    let said = "";
    let ticks = 0;
    let peak = 0;
    child.stdout.on("data", (part) => {
      said += part;
    });
    const look = setInterval(() => {
      const now = tree(child.pid ?? 0);
      ticks = Math.max(
        ticks,
        now.reduce((sum, one) => sum + one.ticks, 0),
      );
      peak = Math.max(
        peak,
        now.reduce((sum, one) => sum + one.memory, 0),
      );
    }, 100);
    child.on("error", fail);
    child.on("close", (code) => {
      clearInterval(look);
      const wall = (performance.now() - from) / 1000;
      const cpu = Math.max(ticks, reaped() - before) / perSecond;
      if (code === 0) done({ wall, cpu, peak, said });
      else fail(new Error(`${command} ${words.join(" ")} ended with ${code}`));
    });
  });
}

/** Runs one of our TypeScript programs and measures it. */
export const programCost = async (
  [program = "", ...words]: readonly string[],
  env?: Readonly<Record<string, string>>,
) => treeCost(process.execPath, [await asJavaScript(join(places.root, program)), ...words], env);

/** The middle value. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const [low = Number.NaN, high = Number.NaN] = [
    sorted[Math.ceil(sorted.length / 2) - 1],
    sorted[half],
  ];
  return (low + high) / 2;
}
