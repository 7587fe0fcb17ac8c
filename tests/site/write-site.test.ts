import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { rules } from "../../lib/check/rules.ts";
import { derive } from "../../lib/derive/derive.ts";
import { loadLibrary } from "../../lib/index.ts";
import { filesBelow } from "../../lib/publish/manifest.ts";

const home = mkdtempSync(join(tmpdir(), "trayleaf-site-"));
const folder = join(home, "dist");
let pages: string[] = [];
const read = (page: string) => readFileSync(join(folder, page), "utf8");

beforeAll(() => {
  execFileSync(
    process.execPath,
    ["--import", "tsx", "lib/cli.ts", "build", "--no-pdf", "--out", folder],
    { stdio: "pipe" },
  );
  pages = filesBelow(folder).filter((file) => file.endsWith(".html"));
}, 120_000);
afterAll(() => rmSync(home, { recursive: true, force: true }));

describe("the site", () => {
  it("has no broken link, and only relative ones", () => {
    const broken = pages.flatMap((page) =>
      [...read(page).matchAll(/(?:href|src)="([^"]*)"/g)].flatMap(([, target = ""]) => {
        if (target.startsWith("#")) return [];
        if (/^([a-z]+:|\/)/i.test(target)) return [`${page}: ${target} is not relative`];
        const file = resolve(folder, dirname(page), target.split("#")[0] ?? "");
        return existsSync(file) ? [] : [`${page}: ${target}`];
      }),
    );
    expect(broken).toEqual([]);
  });

  it("carries the strict policy, the banner and the defer line on every page", () => {
    const bare = pages.filter((page) => {
      const html = read(page);
      return (
        !html.includes("default-src 'none'") ||
        !html.includes("INVENTED DATA") ||
        !html.includes("The surgeon decides.")
      );
    });
    expect(bare).toEqual([]);
  });

  it("uses no style attribute and no inline script, which the policy would refuse", () => {
    const inline = pages.filter((page) => /\sstyle="|\son[a-z]+="|<script>/.test(read(page)));
    expect(inline).toEqual([]);
  });

  it("gives no id twice on a page", () => {
    const twice = pages.flatMap((page) => {
      const ids = [...read(page).matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id);
      return ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `${page}: ${id}`);
    });
    expect(twice).toEqual([]);
  });

  it("tells for a screw why each other candidate fell out", () => {
    expect(read("screws/locking-35.html")).toMatch(
      /sleeve 2\.7<\/a>\s*<\/td>\s*<td>\s*<span>falls out: .*th-27/,
    );
  });

  it("has a page for every rule, and lists all marks", () => {
    expect(pages.filter((page) => page.startsWith("rules/"))).toHaveLength(rules.length + 1);
    expect(read("marks/index.html")).toContain("gliding drill 2.7");
  });

  it("lists every trap and look-alike, since cards say that more stand here", () => {
    const { catalogue } = loadLibrary("content");
    if (!catalogue) throw new Error("The demo library does not resolve");
    const { screwTraps, drillTraps, lookAlikes } = derive(catalogue);
    const folderOf = (id: string) =>
      catalogue.instruments.has(id)
        ? "instruments"
        : catalogue.screws.has(id)
          ? "screws"
          : "plates";
    const absent = [
      ...screwTraps.map(({ screw, zone }) => [
        `screws/${screw}.html`,
        catalogue.zones.get(zone)?.name,
      ]),
      ...drillTraps.map(({ drill, through }) => [
        `instruments/${drill}.html`,
        `${catalogue.instruments.get(through)?.name}</a>`,
      ]),
      ...lookAlikes.map(({ a, tell }) => [`${folderOf(a)}/${a}.html`, tell]),
    ].filter(([page = "", words = "?"]) => !read(page).includes(words));
    expect(absent).toEqual([]);
  });
});
