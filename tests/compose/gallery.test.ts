import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { compose } from "../../lib/compose/compose.ts";
import { siteDrawings } from "../../lib/compose/site-drawings.ts";
import { stepDrawings } from "../../lib/draw/figures/step.ts";
import { holeParts } from "../../lib/draw/parts/hole-parts.ts";
import { instrumentParts } from "../../lib/draw/parts/instrument-parts.ts";
import type { Figure, Pictures } from "../../lib/model/figure.ts";
import { signNames } from "../../lib/model/signs.ts";
import { demo } from "../fixtures/demo-library.ts";

/** Which figure of which file drew an SVG, kept as it is drawn. */
const drewBy = new Map<string, string>();
const watched = Object.fromEntries(
  Object.entries(demo.pictures).map(([kind, draw]) => [
    kind,
    (...given: never[]) => {
      const made = (draw as (...all: never[]) => Figure | number)(...given);
      if (typeof made === "object") drewBy.set(made.svg, kind);
      return made;
    },
  ]),
) as Pictures;
const composing = { ...demo, pictures: watched };
const { gallery } = siteDrawings(composing, compose(composing));
const shown = gallery.flatMap(({ figures }) => figures);
const told = (attribute: string): ReadonlySet<string> =>
  new Set(
    shown.flatMap(({ svg }) =>
      [...svg.matchAll(new RegExp(` data-${attribute}="([^"]*)"`, "g"))].map(([, value = ""]) =>
        value.replace("&apos;", "'"),
      ),
    ),
  );
const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".ts"))
    .map((name) => name.replace(/\.ts$/, ""));
const camel = (name: string): string =>
  name.replace(/-(\w)/g, (_all, letter: string) => letter.toUpperCase());

describe("the gallery", () => {
  test.each(filesIn("lib/draw/figures"))("shows the figure %s", (name) => {
    expect(new Set(shown.map(({ svg }) => drewBy.get(svg)))).toContain(camel(name));
  });

  test.each(filesIn("lib/draw/figures/steps"))("shows the step %s", (name) => {
    expect(Object.keys(stepDrawings)).toContain(name);
    expect(told("verb")).toContain(name);
  });

  test.each(filesIn("lib/draw/parts/instruments"))("shows the instrument %s", (name) => {
    expect(Object.keys(instrumentParts)).toContain(name);
    const own = [...composing.catalogue.instruments.values()].filter(({ kind }) => kind === name);
    expect(own.length).toBeGreaterThan(0);
    for (const instrument of own)
      expect(shown.map(({ title }) => title)).toEqual(
        expect.arrayContaining(
          [
            "whole",
            ...(instrument.kind === "plain-guide"
              ? instrument.ends.map(({ name }) => `${name} end`)
              : ["working end"]),
          ].map((what) => `${instrument.name}, ${what}`),
        ),
      );
    expect(told("part")).toContain(name);
  });

  test.each(Object.keys(holeParts))("shows the hole %s", (kind) => {
    expect(told("hole")).toContain(kind);
  });

  test.each(signNames)("shows the sign %s", (name) => {
    expect(told("sign")).toContain(name);
  });

  test.each([
    ...composing.catalogue.screws.keys(),
    ...composing.derived.chains.map(({ id }) => id),
  ])("shows %s", (id) => {
    const chain = composing.derived.chains.find((one) => one.id === id);
    const screw = composing.catalogue.screws.get(chain?.screw ?? id);
    const zone = chain && composing.catalogue.zones.get(chain.zone);
    const own = shown.filter(
      ({ title }) => title.includes(screw?.called ?? id) && title.includes(zone?.name ?? ""),
    );
    expect(own.length).toBeGreaterThan(0);
  });

  test("gives every drawing a title, a description and the numbers or words it is drawn from", () => {
    for (const { id, title, description, facts = [] } of shown) {
      expect([id, title !== "", description !== ""]).toEqual([id, true, true]);
      expect([id, facts.length > 0]).toEqual([id, true]);
    }
    for (const key of ["id", "title"] as const)
      expect(new Set(shown.map((figure) => figure[key])).size).toBe(shown.length);
  });
});
