import { describe, expect, test } from "vitest";
import { isLag } from "../../lib/compose/chain-groups.ts";
import { trapLines } from "../../lib/compose/traps.ts";
import type { WarningLine } from "../../lib/model/sheet-frame.ts";
import { demo, demoSheets } from "../fixtures/demo-library.ts";

const sheets = demoSheets().filter(({ practice }) => practice === undefined);

const said = ({ subject, words }: WarningLine): string =>
  `${subject} ${words}`.replaceAll("\u00a0", " ");

function linesFor(system: string, lag: boolean): readonly string[] {
  const chains = demo.derived.chains.filter((one) => one.system === system && isLag(one) === lag);
  const zones = chains.map(({ zone }) => zone);
  return trapLines(demo, zones, chains).map(said);
}

describe("what goes in and is wrong", () => {
  test("begins with wrong drills in a sleeve, then the screw of the next part of one opening, then wrong drills in a guide", () => {
    expect(linesFor("pebblefin", false).slice(0, 4)).toEqual([
      "Drill 2.5 and drill 2.0 pass sleeve 3.5, made for drill 2.7.",
      "Screw 3.5 locking in oblong plain part 3.5: head lodges.",
      "Screw 3.5 cortical and screw 4.0 cancellous in threaded part 3.5: heads lodge.",
      "Drill 2.0 passes guide 2.5, made for drill 2.5.",
    ]);
  });

  test("has a drill as wide as the right one after the screws of its system", () => {
    expect(linesFor("pebblefin", false).at(-1)).toBe(
      "Gliding drill 2.7 passes sleeve 3.5, made for drill 2.7.",
    );
  });

  test("has screws of another system last, those that fall through at the very end", () => {
    const lines = linesFor("gatepost", false);
    const away = lines.map((line) => line.includes("(Pebblefin)"));
    expect(away.indexOf(true)).toBe(away.lastIndexOf(false) + 1);
    const falls = lines.map((line) => /falls? through\.$/.test(line));
    expect(falls.indexOf(true)).toBe(falls.lastIndexOf(false) + 1);
  });

  test("stands in one order on every sheet", () => {
    for (const [system, lag, kinds] of [
      ["pebblefin", false, ["pairing", "pocket"]],
      ["gatepost", false, ["pairing", "pocket"]],
    ] as const) {
      const all = linesFor(system, lag);
      const shown = sheets.flatMap((sheet) =>
        sheet.system === system &&
        kinds.some((kind) => kind === sheet.kind) &&
        "traps" in sheet &&
        !sheet.id.endsWith("-lag")
          ? [sheet.traps.lines]
          : [],
      );
      expect(shown.length).toBeGreaterThan(2);
      for (const lines of shown) {
        const own = lines.map(said);
        expect(own).toEqual(all.slice(0, own.length));
      }
    }
  });
});

describe("the two boxes of a pairing sheet", () => {
  test("share the width so that the fuller one has room", () => {
    const wide = sheets.flatMap((sheet) => (sheet.kind === "pairing" ? [sheet.share] : []));
    expect(new Set(wide).size).toBeGreaterThan(1);
  });
});
