import { existsSync, readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { rules } from "../../lib/check/rules.ts";
import { derive } from "../../lib/derive/derive.ts";
import { loadLibrary } from "../../lib/index.ts";
import { filesBelow } from "../../lib/publish/manifest.ts";
import { builtSite } from "./built-site.ts";

let folder: string;
let pages: string[] = [];
const read = (page: string) => readFileSync(join(folder, page), "utf8");

beforeAll(async () => {
  folder = await builtSite();
  pages = filesBelow(folder).filter((file) => file.endsWith(".html"));
}, 240_000);

describe("the site", () => {
  it("has no broken link or anchor, and only relative ones", () => {
    const broken = pages.flatMap((page) =>
      [...read(page).matchAll(/(?:href|src)="([^"]*)"/g)].flatMap(([, target = ""]) => {
        if (/^([a-z]+:|\/)/i.test(target)) return [`${page}: ${target} is not relative`];
        const [path = "", anchor] = target.split("#");
        const file = path === "" ? join(folder, page) : resolve(folder, dirname(page), path);
        if (!existsSync(file)) return [`${page}: ${target}`];
        const held = anchor === undefined || readFileSync(file, "utf8").includes(` id="${anchor}"`);
        return held ? [] : [`${page}: no ${anchor}`];
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
      /sleeve 2\.7<\/a>\s*<\/td>\s*<td data-head="reason">\s*<span>falls out: .*th-27/,
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
      ...lookAlikes.flatMap(({ a, b, tells = [] }) =>
        [a, b].flatMap((id) =>
          tells.map((seen) => [`${folderOf(id)}/${id}.html`, seen.replaceAll('"', "&quot;")]),
        ),
      ),
    ].filter(([page = "", words = "?"]) => !read(page).includes(words));
    expect(absent).toEqual([]);
  });

  it("tells of a screw each reading and its next length, dead readings too", () => {
    const rows = [
      ...read("screws/locking-35.html").matchAll(
        /data-head="reading">\s*<span>([^<]+)<\/span>\s*<\/td>\s*<td data-head="next length">\s*<span>([^<]+)</g,
      ),
    ];
    const told = new Map(rows.map(([, reads = "", next = ""]) => [reads, next]));
    expect(told.get("15–16")).toBe("16");
    expect(told.get("51–53")).toMatch(/^none \(50: 1 to 3 short; 55: 4 to 2 long\)$/);
  });

  it("leads from a left plate to the right one, and back", () => {
    expect(read("plates/lower-fibula-left.html")).toContain(
      'href="../plates/lower-fibula-right.html"',
    );
    expect(read("plates/lower-fibula-right.html")).toContain(
      'href="../plates/lower-fibula-left.html"',
    );
  });

  it("tells what the site is, who decides and what it refuses to state", () => {
    const about = read("about/index.html");
    for (const words of ["The surgeon decides.", "not a clinical approval", "What no card states"])
      expect(about).toContain(words);
  });

  it.each([
    ["instruments", "drill-27-pilot", "What it is for"],
    ["instruments", "drill-27-pilot", "What it wrongly passes"],
    ["instruments", "drill-27-pilot", "What it is easily taken for"],
    ["instruments", "sleeve-35", "What wrongly passes it"],
    ["techniques", "locking-through-sleeve", "Screws and holes"],
  ])("answers on %s/%s: %s", (kind, id, words) => {
    expect(read(`${kind}/${id}.html`)).toContain(`${words}</h2>`);
  });

  it.each(["systems", "plates", "screws", "instruments", "trays", "procedures", "techniques"])(
    "lists every page of %s in its index, and leads back to it",
    (kind) => {
      const index = read(`${kind}/index.html`);
      const all = pages.filter(
        (page) => page.startsWith(`${kind}/`) && !page.endsWith("index.html"),
      );
      expect(all.length).toBeGreaterThan(1);
      for (const page of all) {
        expect(index).toContain(`href="../${page}"`);
        expect(read(page)).toContain(`href="../${kind}/index.html"`);
      }
    },
  );
});
