import { describe, expect, test } from "vitest";
import { confusions, lookAlikeLines, partnerWords } from "../../lib/compose/look-alikes.ts";
import { demo, demoSheets } from "../fixtures/demo-library.ts";

const sheets = demoSheets();

function pairOf(a: string, b: string) {
  const pair = demo.derived.lookAlikes.find((one) => one.a === a && one.b === b);
  if (!pair) throw new Error(`${a} and ${b} are no pair`);
  return pair;
}
const said = (a: string, b: string): string =>
  lookAlikeLines(demo, [pairOf(a, b)])
    .map(({ subject, words, other }) => [subject, words, other?.subject, other?.words].join(" "))
    .join()
    .replaceAll("\u00a0", " ");

describe("a look-alike line", () => {
  test.each([
    ["drill-25", "drill-27-pilot", "Drill 2.5: 2 rings; drill 2.7: 3 rings."],
    ["drill-27-gliding", "drill-27-pilot", "Gliding drill 2.7: 2 rings; drill 2.7: 3 rings."],
    ["cortical-27", "locking-27", "Screw 2.7 cortical: spherical head; locking: threaded head."],
    [
      "lower-fibula-left",
      "lower-fibula-right",
      'Lower fibula plate, LEFT: etched "PF LF L"; RIGHT: etched "PF LF R".',
    ],
    [
      "straight-stiff",
      "thin-shell",
      "Straight stiff plate: thickness 3.3 mm; Thin-shell plate: thickness 1.2 mm.",
    ],
  ])("of %s and %s says which has which", (a, b, expected) => {
    expect(said(a, b)).toBe(expected);
  });

  test("parts no number from its noun or its unit", () => {
    const [line] = lookAlikeLines(demo, [pairOf("limiter-09", "limiter-16")]);
    expect(line?.other?.subject).toBe("limiter\u00a01.6\u00a0N·m:");
  });

  test("says that nothing tells two apart", () => {
    const { tells: _, ...pair } = pairOf("drill-25", "drill-27-pilot");
    expect(lookAlikeLines(demo, [pair])).toEqual([
      { subject: "Drill\u00a02.5 and drill\u00a02.7:", words: "nothing etched tells them apart." },
    ]);
  });

  test("comes first where both parts are handled, then the numbers, then the rest", () => {
    const handled = new Set(["drill-25", "drill-27-pilot", "guide-25"]);
    const lines = confusions(demo, (id) => handled.has(id));
    expect(lines.map(({ subject }) => subject)).toEqual([
      "Drill\u00a02.5:",
      "2.7 is called for",
      "Gliding\u00a0drill\u00a02.7:",
      "Guide\u00a02.5:",
      "Drill\u00a02.5:",
    ]);
  });
});

describe("the look-alike of a slot", () => {
  test.each([
    [
      "drill-25",
      "drill-27-pilot",
      ["drill\u00a02.5", "2\u00a0rings"],
      ["drill\u00a02.7", "3\u00a0rings"],
    ],
    [
      "cortical-27",
      "locking-27",
      ["cortical", "spherical\u00a0head"],
      ["locking", "threaded\u00a0head"],
    ],
  ])("%s or %s is named with what is seen on it", (a, b, ofA, ofB) => {
    const pair = pairOf(a, b);
    const words = (id: string) => Object.values(partnerWords(demo, pair, id));
    expect(words(b)).toEqual(ofA);
    expect(words(a)).toEqual(ofB);
  });

  test("is the most dangerous in the tray, of equals the nearest", () => {
    const [tray] = sheets.filter(({ id }) => id === "pebblefin-tray-small-instruments");
    if (tray?.kind !== "tray") throw new Error("No tray card");
    const [slots] = [...tray.map.svg.matchAll(/data-slot="A1".*?data-slot="A2"/gs)];
    expect(slots?.[0]).toContain("drill\u00a02.7");
    expect(slots?.[0]).toContain("3\u00a0rings");
  });
});

describe("a pairing sheet", () => {
  test("shows drill 2.5 against pilot drill 2.7 before all else", () => {
    const shown = sheets.flatMap((sheet) =>
      sheet.kind === "pairing" && sheet.id === "pebblefin-pairing-plates"
        ? [sheet.lookAlikes.lines[0]]
        : [],
    );
    expect(shown.length).toBeGreaterThan(0);
    for (const line of shown)
      expect([line?.subject, line?.other?.subject]).toEqual(["Drill\u00a02.5:", "drill\u00a02.7:"]);
  });
});
