import { describe, expect, test } from "vitest";
import { backTable } from "../../../lib/draw/figures/back-table.ts";
import { instrumentParts } from "../../../lib/draw/parts/instrument-parts.ts";
import type { BackTable } from "../../../lib/model/figure.ts";
import type { Instrument, InstrumentKind } from "../../../lib/model/instrument.ts";
import { readSvg } from "../read-svg.ts";
import { sampleInterfaces } from "../sample-interfaces.ts";

const item = (kind: InstrumentKind, alike = ""): BackTable["groups"][number]["items"][number] => {
  const [sample] = instrumentParts[kind].samples as readonly Instrument[];
  if (sample === undefined) throw new Error(kind);
  const instrument = { ...sample, id: kind, system: "general", file: "sample.yaml" };
  return { instrument, words: [kind, "1.0"], alike };
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
