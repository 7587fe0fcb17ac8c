import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { table } from "./tools/table.ts";
import { type Cost, median, treeCost } from "./tools/tree-cost.ts";

const [count = "1000", rounds = "3"] = process.argv.slice(2);
const n = Number(count);
if (spawnSync("hugo", ["version"]).status !== 0) {
  process.stderr.write(
    "No hugo to measure against. Install the system's package hugo and run again.\n",
  );
  process.exit(3);
}
const home = mkdtempSync(join(tmpdir(), "trayleaf-bench-"));
const library = join(home, "library");
const hugo = join(home, "hugo");

const put = (file: string, text: string): void => {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
};

/** One drill, the same text for both: our file, and the other's front matter. */
function partOf(index: number): { readonly id: string; readonly yaml: string } {
  const size = (0.7 + (index % 73) / 10).toFixed(1);
  const lines = [
    "kind: drill",
    `name: drill ${index}`,
    `mark: "${size}"`,
    `diameter: ${size}`,
    `use: ${index % 2 === 0 ? "pilot" : "gliding"}`,
    `length: ${100 + (index % 200)}`,
    `reach: ${40 + (index % 60)}`,
    "coupling: drill-small",
    `bands: ${2 + (index % 6)}`,
    "source: {document: parts-list, section: Table 1}",
  ];
  return { id: `part-${String(index).padStart(5, "0")}`, yaml: `${lines.join("\n")}\n` };
}

/** What our pages hold, as a template of the other. */
const page = `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'"><meta name="viewport" content="width=device-width, initial-scale=1"><title>{{ .Params.name }}</title>
{{ range slice "fonts" "paper" "sheet" "site" }}<link rel="stylesheet" href="../style/{{ . }}.css">
{{ end }}</head><body>
<header><a href="#content">Skip to the content</a><p>INVENTED DATA.</p><nav>{{ range slice "Start" "Marks" "Cards" "Safety" }}<a href="../{{ lower . }}/index.html">{{ . }}</a> {{ end }}</nav></header>
<main id="content">
<nav><ol><li><a href="../index.html">Start</a></li></ol></nav>
<h1>{{ .Params.name }}</h1>
{{ $use := cond (eq .Params.use "pilot") "the pilot hole" "the gliding hole" }}
{{ $facts := slice (slice "Drills" $use) (slice "Diameter" (printf "%.1f mm" .Params.diameter)) (slice "On the shank" (printf "%v rings" .Params.bands)) (slice "Coupling" "small drill coupling") (slice "Length" (printf "%v mm" .Params.length)) }}
<dl><div><dt>Mark on the metal</dt><dd><span>{{ .Params.mark }}</span></dd></div>
{{ range $facts }}<div><dt>{{ index . 0 }}</dt><dd><span>{{ index . 1 }}</span></dd></div>
{{ end }}</dl>
{{ $source := .Params.source }}
<table><caption>What is written of it</caption><thead><tr><th>what</th><th>says</th><th>source</th></tr></thead><tbody>
{{ range $facts }}<tr><td>{{ index . 0 }}</td><td>{{ index . 1 }}</td><td>{{ $source.document }}, {{ $source.section }}</td></tr>
{{ end }}</tbody></table>
</main>
<footer><p><strong>The surgeon decides.</strong> Ask: Educator, 1200.</p><nav>{{ range seq 12 }}<a href="../index.html">{{ . }}</a> {{ end }}</nav></footer>
</body></html>
`;

const parts = Array.from({ length: n }, (_, index) => partOf(index));
for (const { id, yaml } of parts) {
  put(join(library, "general/instruments", `${id}.yaml`), yaml);
  put(join(hugo, "content/instruments", `${id}.md`), `---\n${yaml}---\n`);
}
put(join(hugo, "layouts/_default/single.html"), page);
put(
  join(hugo, "config.yaml"),
  "baseURL: /\nuglyURLs: true\ndisableKinds: [home, section, taxonomy, term, RSS, sitemap, robotsTXT, 404]\n",
);

const ours = (out: string) =>
  treeCost(process.execPath, ["tests/bench/tools/contenders/pages.mjs", library, out]);
const theirs = (out: string) => treeCost("hugo", ["--quiet", "-s", hugo, "-d", out]);
const costs = {
  "trayleaf, from nothing": [] as Cost[],
  "hugo, from nothing": [] as Cost[],
  "trayleaf, again": [] as Cost[],
  "hugo, again": [] as Cost[],
};
for (let round = 0; round < Number(rounds); round++) {
  const [own, other] = [join(home, `own-${round}`), join(home, `other-${round}`)];
  costs["trayleaf, from nothing"].push(await ours(own));
  costs["hugo, from nothing"].push(await theirs(other));
  costs["trayleaf, again"].push(await ours(own));
  costs["hugo, again"].push(await theirs(other));
  for (const { id } of parts.filter((_, index) => index % Math.ceil(n / 20) === 0)) {
    const [a, b] = [own, other].map((out) => {
      const html = readFileSync(join(out, `instruments/${id}.html`), "utf8");
      const main = html.slice(html.indexOf("<h1"), html.indexOf("</main>"));
      return main
        .replace(/<[^>]*>/g, " ")
        .replace(/\s+/g, " ")
        .trim();
    });
    if (a !== b || !a?.includes("mm")) throw new Error(`${id} differs:\n${a}\n${b}`);
  }
}
rmSync(home, { recursive: true, force: true });

type Name = keyof typeof costs;
const middle = (name: Name, what: keyof Cost) => median(costs[name].map((cost) => cost[what]));
const ratio = (what: keyof Cost, when: string): number =>
  Math.round(
    (middle(`trayleaf, ${when}` as Name, what) / middle(`hugo, ${when}` as Name, what)) * 100,
  ) / 100;
process.stdout.write(
  `${table(
    [`${n} pages`, "wall s", "CPU s", "peak MiB"],
    (Object.keys(costs) as Name[]).map((name) => [
      name,
      ...(["wall", "cpu", "peak"] as const).map((what) => middle(name, what)),
    ]),
  )}\n${JSON.stringify({
    n,
    wall_vs_hugo_cold: ratio("wall", "from nothing"),
    wall_vs_hugo_warm: ratio("wall", "again"),
    cpu_vs_hugo_cold: ratio("cpu", "from nothing"),
    cpu_vs_hugo_warm: ratio("cpu", "again"),
  })}\n`,
);
