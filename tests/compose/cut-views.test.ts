import { describe, expect, test } from "vitest";
import { isLag } from "../../lib/compose/chain-groups.ts";
import { cutBeside, cutsUnder, cutsWanted, leastHeights } from "../../lib/compose/step-cuts.ts";
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

  test("stand on every card, on A4 and on Letter", () => {
    expect(new Set(cards.map(({ format }) => format.id))).toEqual(
      new Set(["a4-portrait", "letter-portrait"]),
    );
    const bare = cards.filter(({ sections = [] }) => sections.length === 0);
    expect(bare.map(({ id, format }) => `${id}.${format.id}`)).toEqual([]);
  });

  test("stand beside the title one at a time, named only where the card has other screws", () => {
    const beside = cards.filter(({ sectionsBeside }) => sectionsBeside);
    expect(beside.length).toBeGreaterThan(0);
    for (const { id, shows, sections = [] } of beside) {
      const own = chains.filter((chain) => shows.includes(`chain/${chain.id}`));
      const screws = new Set(own.map(({ screw }) => screw)).size;
      expect([id, sections.map(({ words }) => words !== "")]).toEqual([id, [screws > 1]]);
    }
  });

  test("are never shrunk below a note, but left out where steps leave no paper", () => {
    const letters = cards.flatMap(({ sections = [] }) =>
      sections.flatMap(({ figure }) =>
        [...figure.svg.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size)),
      ),
    );
    expect(Math.min(...letters)).toBeGreaterThanOrEqual(2.7);
    const [page] = cards;
    if (page === undefined) throw new Error("The demo has no step card");
    const wanted = cutsWanted(demo, chains);
    const [least = 0] = [...leastHeights].sort((a, b) => a - b);
    expect(cutsUnder(demo, wanted, page, least, least)).toBeUndefined();
    expect(cutsUnder(demo, wanted, page, least + 12, least)).toBeDefined();
    const one = wanted.slice(0, 1);
    expect(cutBeside(demo, one, page, 0)).toBeUndefined();
    expect(cutBeside(demo, one, page, 20)).toBeDefined();
  });
});
