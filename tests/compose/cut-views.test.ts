import { describe, expect, test } from "vitest";
import { isLag } from "../../lib/compose/chain-groups.ts";
import { known } from "../../lib/model/catalogue.ts";
import type { StepView } from "../../lib/model/sheet.ts";
import { demo, demoDrawings, demoSheets } from "../fixtures/demo-library.ts";

const { chains } = demo.derived;
const sheets = demoSheets();
const cuts = demoDrawings().chains;
const cards = sheets.filter((sheet): sheet is StepView => sheet.kind === "steps");

/** The title a chain's cut view must have: its screw, its hole, and how it sits. */
function titleOf(chain: (typeof chains)[number]): string {
  const { called } = known(demo.catalogue.screws, chain.screw);
  const { name } = known(demo.catalogue.zones, chain.zone);
  if (isLag(chain)) return `${called} as lag screw through ${name}`;
  const near = chain.recipe === "unicortical-locking" ? ", near side only" : "";
  return `${called} seated in ${name}${near}`;
}

describe("cut views of the demo", () => {
  test.each(chains.map((chain) => [chain.id, chain] as const))(
    "%s has its own on a printed sheet of its system and on its page",
    (id, chain) => {
      const printed = sheets.filter(
        ({ system, sections = [] }) =>
          system === chain.system && sections.some(({ figure }) => figure.title === titleOf(chain)),
      );
      expect(printed.length).toBeGreaterThan(0);
      const page = cuts.get(id) ?? [];
      expect(page.map(({ title }) => title)).toContain(titleOf(chain));
    },
  );

  test("stand on every technique card of A4 that has a chain through a plate", () => {
    const bare = cards.filter(
      ({ id, format, sections = [] }) =>
        format.id === "a4-portrait" && id.includes("-steps-") && sections.length === 0,
    );
    expect(bare.map(({ id }) => id)).toEqual([]);
  });

  test("stand beside the title one at a time and without words of their own", () => {
    const beside = cards.filter(({ sectionsBeside }) => sectionsBeside);
    expect(beside.length).toBeGreaterThan(0);
    for (const { sections = [] } of beside)
      expect(sections.map(({ words }) => words)).toEqual([""]);
  });

  test("are left out, never shrunk below a note, where steps leave no paper", () => {
    const letters = cards.flatMap(({ sections = [] }) =>
      sections.flatMap(({ figure }) =>
        [...figure.svg.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size)),
      ),
    );
    expect(Math.min(...letters)).toBeGreaterThanOrEqual(2.7);
    expect(cards.some(({ sections }) => sections === undefined)).toBe(true);
  });
});
