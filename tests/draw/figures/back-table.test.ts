import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { backTables } from "../../../lib/compose/back-tables.ts";
import { backTable } from "../../../lib/draw/figures/back-table.ts";
import { tableColumns } from "../../../lib/draw/layout/table-columns.ts";
import { instrumentParts } from "../../../lib/draw/parts/instrument-parts.ts";
import type { BackTable } from "../../../lib/model/figure.ts";
import type { Instrument, InstrumentKind } from "../../../lib/model/instrument.ts";
import { demo } from "../../fixtures/demo-library.ts";
import { runs } from "../../fixtures/runs.ts";
import { readSvg } from "../read-svg.ts";
import { sampleInterfaces } from "../sample-interfaces.ts";

const item = (kind: InstrumentKind, alike = ""): BackTable["groups"][number]["items"][number] => {
  const [sample] = instrumentParts[kind].samples as readonly Instrument[];
  if (sample === undefined) throw new Error(kind);
  const instrument = { ...sample, id: kind, system: "general", file: "sample.yaml" };
  return { instrument, words: [kind, "1.0"], step: 0, alike, alikeWith: [] };
};
const table: BackTable = {
  name: "Sample plate",
  groups: [
    { called: "Screw 2.7 locking", items: [item("threaded-sleeve"), item("drill", "3 rings")] },
    { called: "Screw 3.5 cortical", items: [item("plain-guide"), item("tap")] },
  ],
};
const drawn = (side: "scrub side" | "opposite side") =>
  backTable("t", table, sampleInterfaces, { width: 250, side });
const order = (svg: string): readonly (string | undefined)[] =>
  readSvg(svg).flatMap(({ attributes }) => attributes["data-tool"] ?? []);
const places = (svg: string): readonly number[] =>
  readSvg(svg)
    .filter(({ attributes }) => attributes.class === "place")
    .map(({ attributes }) => Number(/translate\(([\d.]+)/.exec(attributes.transform ?? "")?.[1]));

describe("a back table", () => {
  test("lays instruments in order of use from the left on the scrub side, from the right on the other", () => {
    const [near, far] = [drawn("scrub side"), drawn("opposite side")];
    expect(order(near.svg)).toEqual(["threaded-sleeve", "drill", "plain-guide", "tap"]);
    expect(order(far.svg)).toEqual(order(near.svg));
    expect(places(near.svg)).toEqual([...places(near.svg)].sort((a, b) => a - b));
    expect(places(far.svg)).toEqual([...places(far.svg)].sort((a, b) => b - a));
  });

  test("turns every point away from the scrub nurse", () => {
    const turns = (svg: string): readonly (string | undefined)[] =>
      readSvg(svg).flatMap(({ attributes }) =>
        attributes["data-tool"]
          ? (/rotate\((-?\d+)\)/.exec(attributes.transform ?? "")?.[1] ?? "")
          : [],
      );
    expect(new Set(turns(drawn("scrub side").svg))).toEqual(new Set(["90"]));
    expect(new Set(turns(drawn("opposite side").svg))).toEqual(new Set(["-90"]));
  });

  test("marks what looks like something else on it, and tells the table in words", () => {
    const { svg, facts } = drawn("scrub side");
    expect(svg.match(/data-flag="look-alike"/g)).toHaveLength(1);
    expect(facts).toEqual([
      ["Screw 2.7 locking", "threaded-sleeve 1.0, drill 1.0 (3 rings)"],
      ["Screw 3.5 cortical", "plain-guide 1.0, tap 1.0"],
    ]);
  });
});

/** The things of a drawn table by row, the nearest first, each row as its columns from the left; a place without a tool is free. */
function columnsOf(svg: string): readonly (readonly (string | undefined)[])[] {
  const laid: { x: number; y: number; tool?: string }[] = [];
  for (const { attributes } of readSvg(svg)) {
    const [, x, y] = /translate\(([-\d.]+) ([-\d.]+)\)/.exec(attributes.transform ?? "") ?? [];
    if (attributes.class === "place") laid.push({ x: Number(x), y: Number(y) });
    const tool = attributes["data-tool"];
    if (tool !== undefined) Object.assign(laid.at(-1) ?? {}, { tool });
  }
  const rows = [...new Set(laid.map(({ y }) => y))].sort((a, b) => b - a);
  return rows.map((row) =>
    laid
      .filter(({ y }) => y === row)
      .sort((a, b) => a.x - b.x)
      .map(({ tool }) => tool),
  );
}

const kinds = Object.keys(instrumentParts) as readonly InstrumentKind[];
/** Tables of one to four screws with up to six instruments each, some of them taken for one another. */
const tables = fc
  .array(
    fc.array(fc.record({ kind: fc.constantFrom(...kinds), step: fc.nat(3) }), {
      minLength: 1,
      maxLength: 6,
    }),
    { minLength: 1, maxLength: 4 },
  )
  .chain((groups) => {
    const ids = groups.flatMap((group, g) => group.map((_, i) => `g${g}i${i}`));
    const pair = fc.tuple(fc.constantFrom(...ids), fc.constantFrom(...ids));
    return fc
      .array(pair, { maxLength: 8 })
      .map((pairs) => ({ groups, pairs: pairs.filter(([a, b]) => a !== b) }));
  });

describe("on a generated back table", () => {
  test("look-alikes lie at least two columns apart, both marked in words, and nothing leaves its step", () => {
    let marked = 0;
    fc.assert(
      fc.property(tables, ({ groups, pairs }) => {
        const steps = new Map<string, number>();
        const made: BackTable = {
          name: "Generated",
          groups: groups.map((group, g) => ({
            called: `Screw ${g}`,
            items: group
              .toSorted((a, b) => a.step - b.step)
              .map(({ kind, step }, i) => {
                const id = `g${g}i${i}`;
                steps.set(id, g * 10 + step);
                const alikeWith = pairs.flatMap(([a, b]) => (a === id ? [b] : b === id ? [a] : []));
                const plain = item(kind);
                const alike = alikeWith.length > 0 ? `unlike ${id}` : "";
                return {
                  ...plain,
                  instrument: { ...plain.instrument, id },
                  step,
                  alike,
                  alikeWith,
                };
              }),
          })),
        };
        const { svg } = backTable("t", made, sampleInterfaces, { width: 250, side: "scrub side" });
        const rows = columnsOf(svg);
        const order = rows.flat().flatMap((tool) => (tool === undefined ? [] : [tool]));
        expect([...order].sort()).toEqual([...steps.keys()].sort());
        const at = order.map((tool) => steps.get(tool) ?? -1);
        expect(at).toEqual([...at].sort((a, b) => a - b));
        for (const [a, b] of pairs) {
          marked += 1;
          for (const row of rows)
            if (row.includes(a) && row.includes(b))
              expect(Math.abs(row.indexOf(a) - row.indexOf(b))).toBeGreaterThanOrEqual(2);
          for (const one of [a, b]) expect(svg.replace(/<[^>]*>/g, " ")).toContain(`unlike ${one}`);
        }
        expect(svg.match(/data-flag="look-alike"/g) ?? []).toHaveLength(new Set(pairs.flat()).size);
      }),
      { numRuns: runs(300), seed: 7 },
    );
    expect(marked).toBeGreaterThan(runs(300));
  });
});

test("on the demo's back tables every look-alike that meets its partner is marked, and lies apart from it", () => {
  let met = 0;
  for (const procedure of demo.catalogue.procedures.keys()) {
    const [near] = backTables(demo, procedure);
    if (near === undefined) throw new Error(`No back table of ${procedure}`);
    const rows = columnsOf(near.svg);
    const lying = new Set(rows.flat());
    const pairs = demo.derived.lookAlikes.filter(({ a, b }) => lying.has(a) && lying.has(b));
    met += pairs.length;
    const marked = new Set(pairs.flatMap(({ a, b }) => [a, b]));
    const flags = near.svg.match(/data-flag="look-alike"/g) ?? [];
    expect(flags.length >= marked.size && (marked.size > 0 || flags.length === 0)).toBe(true);
    for (const row of rows)
      for (const { a, b } of pairs)
        if (row.includes(a) && row.includes(b))
          expect(Math.abs(row.indexOf(a) - row.indexOf(b))).toBeGreaterThanOrEqual(2);
  }
  expect(met).toBeGreaterThan(0);
});

describe("columns of a table", () => {
  const thing = (id: string, step: number, ...alikeWith: string[]) => ({ id, step, alikeWith });
  const laid = (...groups: ReturnType<typeof thing>[][]) =>
    tableColumns(groups).map((group) => group.map((one) => one?.id ?? "free").join(" "));

  test.each([
    [
      "things of one step change places",
      [[thing("a", 0), thing("b", 0, "a"), thing("c", 0)]],
      ["a c b"],
    ],
    [
      "a place stays free where the order is fixed",
      [[thing("a", 0), thing("b", 1, "a")]],
      ["a free b"],
    ],
    ["so it does between two screws", [[thing("a", 0)], [thing("b", 0, "a")]], ["a", "free b"]],
    ["nothing is moved without need", [[thing("b", 0), thing("a", 0), thing("c", 1)]], ["b a c"]],
    ["a step never waits for a later one", [[thing("b", 1), thing("a", 0)]], ["a b"]],
  ] as const)("%s", (_what, groups, expected) => {
    expect(laid(...groups.map((group) => [...group]))).toEqual(expected);
  });
});
