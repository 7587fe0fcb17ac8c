import { describe, expect, test } from "vitest";
import { compose } from "../../lib/compose/compose.ts";
import { everyScrew, handOf } from "../../lib/compose/hand-words.ts";
import { derive } from "../../lib/derive/derive.ts";
import { pictures } from "../../lib/draw/pictures.ts";
import { loadLibrary } from "../../lib/index.ts";
import type { SheetView } from "../../lib/model/sheet.ts";
import { minnow } from "./minnow.ts";

const { catalogue } = loadLibrary("content");
if (!catalogue) throw new Error("The demo library does not resolve");
const composing = { catalogue, derived: derive(catalogue), pictures, today: "2026-10-05" };
const { chains } = composing.derived;
const of = (system: string) => chains.filter((chain) => chain.system === system);
const spaced = (words: string): string => words.replaceAll("\u00a0", " ");

describe("chains on one line", () => {
  test("leave gauge and handle to one sentence where all of them have the same", () => {
    const hand = handOf(composing, of("pebblefin"));
    expect(spaced(hand.everyScrew)).toBe("Gauge 10–70 and handle S for every screw here.");
    for (const chain of of("pebblefin")) expect(hand.words(chain)).not.toMatch(/gauge|handle/);
  });

  test("name both on each line where the chains do not share them", () => {
    const hand = handOf(composing, [...of("pebblefin"), ...of("gatepost")]);
    expect(hand.everyScrew).toBe("");
    const words = [...of("pebblefin"), ...of("gatepost")].map(hand.words);
    for (const line of words) expect(line).toMatch(/gauge \d.*handle [SL]/);
    expect(words).toContain(
      "sleeve 3.5, drill 2.7, gauge 10–70, driver 20, limiter 1.6 N·m, handle S",
    );
    expect(words).toContain(
      "guide 3.2 centred, drill 3.2, gauge 14–100, tap 4.5, driver 30, handle L, by hand",
    );
  });

  test("share nothing with a chain that has none of it", () => {
    const [first] = of("pebblefin");
    if (first === undefined) throw new Error("No chain");
    const without = { ...first, links: first.links.filter(({ role }) => role !== "gauge") };
    expect(spaced(everyScrew(composing, [first, without], ["gauge", "handle"]))).toBe(
      "Handle S for every screw here.",
    );
  });
});

/** Every hand-over line of a sheet. */
function linesOf(sheet: SheetView): readonly string[] {
  switch (sheet.kind) {
    case "plate-map":
      return sheet.bands.flatMap(({ pairings }) => pairings.map(({ hand }) => hand));
    case "case":
    case "pocket":
      return sheet.rows.map(({ hand }) => hand);
    case "steps":
      return sheet.steps.map(({ handedWith }) => handedWith).filter((words) => words !== "");
    case "poster":
      return sheet.families.flatMap(({ rows }) =>
        rows.map(({ cells }) =>
          cells.map(({ noun, number, note }) => `${noun} ${number} ${note}`).join(", "),
        ),
      );
    default:
      return [];
  }
}

describe.each([
  ["the demo", composing],
  ["a small library", minnow],
])("on every sheet of %s with such lines", (_name, library) => {
  const sheets = compose(library).filter(({ practice }) => practice === undefined);

  test("gauge and handle stand on the line or are said once for all", () => {
    const asked = sheets.filter((sheet) => linesOf(sheet).length > 0);
    expect(asked.length).toBeGreaterThan(3);
    for (const sheet of asked) {
      const once = sheets
        .filter(
          ({ identity, format }) =>
            identity.card === sheet.identity.card && format === sheet.format,
        )
        .map((face) => face.everyScrew ?? "")
        .join(" ");
      for (const line of linesOf(sheet))
        for (const part of ["gauge", "handle"])
          expect([sheet.id, line, `${line} ${once}`.toLowerCase().includes(part)]).toEqual([
            sheet.id,
            line,
            true,
          ]);
    }
  });
});
