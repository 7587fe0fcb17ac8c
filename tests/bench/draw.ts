import { compose } from "../../lib/compose/compose.ts";
import { derive } from "../../lib/derive/derive.ts";
import { drawnOnce } from "../../lib/draw/drawn-once.ts";
import { drawings } from "../../lib/draw/pictures.ts";
import { loadLibrary } from "../../lib/index.ts";
import type { Figure, Pictures } from "../../lib/model/figure.ts";
import { stringParts } from "./tools/string-parts.ts";
import { table } from "./tools/table.ts";
import { median } from "./tools/tree-cost.ts";

type Call = { readonly kind: keyof Pictures; readonly args: readonly unknown[] };
type Draw = (...args: readonly unknown[]) => Figure;

const today = "2026-11-25";
const rounds = Number(process.argv[2] ?? 7);
const { catalogue } = loadLibrary("content");
if (!catalogue) throw new Error("The demo library has a stop: npm run trayleaf -- check");

const calls: Call[] = [];
const noted = new Proxy(drawings, {
  get: (own, kind: keyof Pictures) => {
    if (kind === "textWidth") return own.textWidth;
    return (...args: readonly unknown[]): Figure => {
      calls.push({ kind, args });
      return (own[kind] as unknown as Draw)(...args);
    };
  },
});
compose({ catalogue, derived: derive(catalogue), today, pictures: noted });

const draw = (from: Pictures, { kind, args }: Call): string =>
  (from[kind] as unknown as Draw)(...args).svg;
/** Milliseconds of processor time that something takes, the median of all rounds. */
function spent(work: () => void): number {
  const times = Array.from({ length: rounds }, () => {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  });
  return median(times);
}

const kinds = [...new Set(calls.map(({ kind }) => kind))];
const kept = drawnOnce(drawings);
let sink = 0;
const rows = kinds.map((kind) => {
  const own = calls.filter((call) => call.kind === kind);
  const parts = own.map((call) => stringParts(draw(drawings, call)));
  for (const [at, call] of own.entries())
    if (parts[at]?.build() !== draw(kept, call)) throw new Error(`${kind} is built otherwise`);
  const repeats = Math.max(1, Math.ceil(2000 / own.length));
  const string = spent(() => {
    for (let at = 0; at < repeats; at++) for (const part of parts) sink += part.build().length;
  });
  const cold = spent(() => {
    for (const call of own) sink += draw(drawings, call).length;
  });
  const cached = spent(() => {
    for (let at = 0; at < repeats; at++) for (const call of own) sink += draw(kept, call).length;
  });
  return { kind, count: own.length, string: string / repeats, cold, cached: cached / repeats };
});
if (sink === 0) throw new Error("Nothing was drawn");

const all = (what: "string" | "cold" | "cached"): number =>
  rows.reduce((sum, row) => sum + row[what], 0);
const two = (value: number): number => Math.round(value * 100) / 100;
process.stdout.write(
  `${table(
    ["", "figures", "string ms", "cold ms", "cached ms", "cold x string", "cached x string"],
    rows.map(({ kind, count, string, cold, cached }) => [
      kind,
      String(count),
      (string / count).toFixed(4),
      cold / count,
      (cached / count).toFixed(4),
      cold / string,
      cached / string,
    ]),
  )}\n${JSON.stringify({
    figures: calls.length,
    rounds,
    cold_ms: two(all("cold") / calls.length),
    cold_vs_string: two(all("cold") / all("string")),
    cached_vs_string: two(all("cached") / all("string")),
  })}\n`,
);
