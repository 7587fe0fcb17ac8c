import { expect, test } from "vitest";
import { traceSheets } from "../../../lib/compose/trace/trace-sheets.ts";
import { citationOf } from "../../../lib/model/citation-of.ts";
import { definitionsOf } from "../../../lib/model/find-definition.ts";
import { demo, demoSheets } from "../../fixtures/demo-library.ts";

const { catalogue } = demo;
const sheets = demoSheets();
const traces = traceSheets(demo, sheets);

test("Every card of the demo library has a trace, and no number on it is untold.", () => {
  expect(sheets.length).toBeGreaterThan(100);
  expect([...traces.keys()].sort()).toEqual([...new Set(sheets.map(({ id }) => id))].sort());
  expect([...traces.values()].flatMap(({ untold }) => untold)).toEqual([]);
});

test("Every fact of every claim leads to a document and a section.", () => {
  const astray = [...traces.values()].flatMap(({ sheet, claims }) =>
    claims.flatMap(({ facts }) =>
      facts.flatMap(({ kind, id, path }) => {
        if (kind === "document" || kind === "term") return [];
        const definition = definitionsOf(catalogue, kind).get(id);
        const cited = definition && citationOf(definition, path);
        return cited && catalogue.documents.has(cited.document) ? [] : [`${sheet}: ${kind}/${id}`];
      }),
    ),
  );
  expect([...new Set(astray)]).toEqual([]);
});

test("The length of the next screw follows from rack, gauge and policy.", () => {
  const claims = traces.get("pebblefin-lengths")?.claims ?? [];
  const readings = claims.find(({ what }) => what.startsWith("readings for Screw 3.5 locking"));
  expect(readings?.facts.map(({ kind, path }) => [kind, path[0]])).toEqual([
    ["screw", "lengths"],
    ["instrument", "scale"],
    ["system", "length_policy"],
    ["system", "length_policy"],
  ]);
});

test("A warning of a drill that goes through another's sleeve names the drill's diameter and the sleeve's bore.", () => {
  const { claims } = traces.get("pebblefin-pairing-plates") ?? { claims: [] };
  const warned = claims.flatMap(({ what, facts }) =>
    what === "goes in, and is wrong"
      ? facts.map(({ kind, id, path }) => [kind, id, ...path].join(" "))
      : [],
  );
  expect(warned).toContain("instrument drill-25 diameter");
  expect(warned).toContain("instrument sleeve-35 bore");
});
