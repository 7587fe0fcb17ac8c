import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as after } from "node:timers/promises";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { program, variables } from "../cli/run-cli.ts";
import { smallLibrary } from "../fixtures/small-library.ts";

const home = mkdtempSync(join(tmpdir(), "trayleaf-served-"));
const library = join(home, "library");
const screw = join(library, "systems/pebblefin/screws/locking-35.yaml");
const was = () => readFileSync("content/systems/pebblefin/screws/locking-35.yaml", "utf8");
let child: ChildProcess;
let said = "";
let url = "";

const text = async (path: string): Promise<string> => (await fetch(`${url}${path}`)).text();

/** What a page says as soon as it says something, asked again and again. */
async function once(path: string, words: RegExp): Promise<string> {
  for (;;) {
    const page = await text(path);
    if (words.test(page)) return page;
    await after(200);
  }
}

/** The folders that a server keeps its build in. */
const kept = (): string[] => readdirSync(home).filter((name) => name.startsWith("trayleaf-serve-"));

beforeAll(async () => {
  smallLibrary(library);
  const words = [program, "serve", "--library", library];
  child = spawn(process.execPath, words, { env: { ...process.env, ...variables, TMPDIR: home } });
  child.stdout?.on("data", (part) => {
    said += part;
  });
  while (!/http:\S+\//.test(said)) await after(50);
  url = /http:\S+\//.exec(said)?.[0] ?? "";
}, 60_000);
afterAll(() => {
  child.kill("SIGKILL");
  rmSync(home, { recursive: true, force: true });
});

describe("trayleaf serve", { timeout: 180_000 }, () => {
  it("says that it builds, then shows the site, and nothing that lies outside of it", async () => {
    expect(await text("")).toContain("The first build is under way");
    expect(await once("screws/locking-35.html", /host this|a stop stands/)).toContain(
      '<script src="/live.js"></script></body>',
    );
    expect((await fetch(`${url}..%2f..%2flibrary/publisher.yaml`)).status).toBe(404);
    expect((await fetch(`${url}nothing.html`)).status).toBe(404);
    expect((await fetch(`${url}%`)).status).toBe(200);
  });

  it.runIf(existsSync("/proc/net/tcp"))("listens on this machine alone", () => {
    const port = Number(new URL(url).port).toString(16).toUpperCase().padStart(4, "0");
    const listening = ["/proc/net/tcp", "/proc/net/tcp6"]
      .filter((file) => existsSync(file))
      .flatMap((file) => readFileSync(file, "utf8").split("\n"))
      .map((line) => line.trim().split(/\s+/))
      .filter(([, local = "", , state]) => state === "0A" && local.endsWith(`:${port}`));
    expect(listening.map(([, local]) => local)).toEqual([`0100007F:${port}`]);
  });

  it("shows a change in content, and tells open pages of it", async () => {
    const live = await fetch(`${url}live`);
    const reader = live.body?.getReader();
    writeFileSync(screw, was().replace("called: Screw 3.5 locking", "called: Screw 3.5 changed"));
    await once("screws/locking-35.html", /<h1[^>]*>Screw 3\.5 changed<\/h1>/);
    const { value } = (await reader?.read()) ?? {};
    expect(new TextDecoder().decode(value)).toContain("data: rebuilt");
    await reader?.cancel();
  });

  it("shows a finding in the page with its file and line, then the site again", async () => {
    writeFileSync(screw, was().replace("pilot: 2.7", "pilot: 2.6"));
    const page = await once("index.html", /Nothing is shown while a stop stands/);
    expect(page).toMatch(/systems\/pebblefin\/screws\/locking-35\.yaml:\d+:\d+ {2}STOP/);
    writeFileSync(screw, was());
    await once("screws/locking-35.html", /<h1[^>]*>Screw 3\.5 locking<\/h1>/);
  });

  it("ends by a signal while it builds, and leaves nothing behind", async () => {
    expect(kept()).toHaveLength(1);
    writeFileSync(screw, `${was()}\n`);
    await after(400);
    const code = new Promise((done) => child.once("exit", done));
    child.kill("SIGTERM");
    expect(await code).toBe(0);
    expect(kept()).toEqual([]);
  });
});
