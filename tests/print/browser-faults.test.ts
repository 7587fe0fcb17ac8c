import { execFileSync, spawnSync } from "node:child_process";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { Stop } from "../../lib/model/stop.ts";
import type { Printed, PrintJob } from "../../lib/print/print-job.ts";
import { printJobs } from "../../lib/print/print-jobs.ts";

const mark = "--trayleaf-fault-test";
const options = {
  css: "@page { size: 100mm 100mm; margin: 0 }",
  language: "en",
  day: "2026-10-01",
};
const job = (_: unknown, index: number): PrintJob => ({
  file: `pdf/${index}.pdf`,
  title: `${index}`,
  html: `<h1>Sheet ${index}</h1>`,
  paper: [100, 100],
  pages: 1,
  texts: [`Sheet ${index}`],
  thumbnail: false,
});
/** More than are printed at once. */
const few = Array.from({ length: 30 }, job);
const many = Array.from({ length: 400 }, job);
const given = { ...process.env };
let restless: ReturnType<typeof setInterval> | undefined;

type Process = { readonly pid: number; readonly parent: number; readonly words: string };

/** The browsers of this file and all their processes, living ones only. */
function browsers(): readonly Process[] {
  const all = execFileSync("ps", ["-e", "-o", "pid=,ppid=,stat=,args="], { encoding: "utf8" })
    .split("\n")
    .flatMap((line) => {
      const [, pid, parent, state = "", words = ""] =
        /^ *(\d+) +(\d+) +(\S+) +(.*)$/.exec(line) ?? [];
      return pid && !state.startsWith("Z")
        ? [{ pid: Number(pid), parent: Number(parent), words }]
        : [];
    });
  const own = new Map(all.filter(({ words }) => words.includes(mark)).map((one) => [one.pid, one]));
  for (let size = -1; size !== own.size; ) {
    size = own.size;
    for (const one of all) if (own.has(one.parent)) own.set(one.pid, one);
  }
  return [...own.values()];
}

function signal(name: NodeJS.Signals, only = ""): void {
  for (const { pid, words } of browsers())
    if (words.includes(only)) {
      try {
        process.kill(pid, name);
      } catch {
        // It has ended since it was listed.
      }
    }
}

const limiter = "prlimit";

/** Takes away all further memory from the pages of this file's browsers. */
function starve(): void {
  for (const { pid, words } of browsers())
    if (words.includes("--type=renderer"))
      spawnSync(limiter, ["--pid", String(pid), "--as=1", "--data=1"], { stdio: "ignore" });
}

async function print(jobs: readonly PrintJob[], atFirst: () => void): Promise<readonly string[]> {
  const files: string[] = [];
  await printJobs(jobs, { ...options, lanes: 1 }, ({ file, facts }: Printed) => {
    expect(facts).toEqual({ pages: 1, overflow: [], missing: [] });
    if (files.push(file) === 1) atFirst();
  });
  return files.sort();
}

beforeEach(() => {
  process.env["PUPPETEER_EXECUTABLE_PATH"] ??= "/usr/lib/chromium/chromium";
  process.env["TRAYLEAF_BROWSER_ARGS"] = `${given["TRAYLEAF_BROWSER_ARGS"] ?? ""} ${mark}`;
});
afterEach(() => {
  clearInterval(restless);
  signal("SIGKILL");
  for (const name of ["PUPPETEER_EXECUTABLE_PATH", "TRAYLEAF_BROWSER_ARGS"]) {
    if (given[name] === undefined) delete process.env[name];
    else process.env[name] = given[name];
  }
});

describe("a browser that fails once", { timeout: 90_000 }, () => {
  it.each<readonly [string, () => void]>([
    ["is killed", () => signal("SIGKILL")],
    ["loses its page", () => signal("SIGKILL", "--type=renderer")],
    ["runs out of memory", starve],
    ["hangs", () => signal("SIGSTOP")],
    ["has a page that hangs", () => signal("SIGSTOP", "--type=renderer")],
  ])("%s: it is replaced, all is printed, and no process is left", async (_, fault) => {
    expect(await print(few, fault)).toEqual(few.map(({ file }) => file).sort());
    expect(browsers()).toEqual([]);
  });
});

describe("a browser that keeps failing", { timeout: 90_000 }, () => {
  it.each<readonly [string, () => void]>([
    ["is killed", () => signal("SIGKILL")],
    ["loses its page", () => signal("SIGKILL", "--type=renderer")],
    ["runs out of memory", starve],
    ["hangs", () => signal("SIGSTOP", "--type=renderer")],
  ])("%s: the build stops with 3 within 30 s, and no process is left", async (_, fault) => {
    const from = performance.now();
    const failed = await print(many, () => {
      fault();
      restless = setInterval(fault, 400);
    }).catch((error: unknown) => error);
    expect(failed).toBeInstanceOf(Stop);
    expect((failed as Stop).exit).toBe(3);
    expect((failed as Stop).message).toContain("failed twice");
    expect(performance.now() - from).toBeLessThan(30_000);
    clearInterval(restless);
    expect(browsers()).toEqual([]);
  });
});
