import { describe, expect, test } from "vitest";
import { pocketSheets } from "../../lib/compose/pocket-sheet.ts";
import { posterSheets } from "../../lib/compose/poster-sheet.ts";
import { minnow } from "./minnow.ts";

const [whole, front, back] = pocketSheets(minnow, "minnow");

describe("a pocket card", () => {
  test("shows rows, variants and traps on one face where there is room", () => {
    expect(whole?.face).toBe("whole");
    expect(whole?.rows.some(({ phrase }) => phrase !== "")).toBe(true);
    expect(whole?.traps.lines.length).toBeGreaterThan(0);
  });

  test("turns to two faces on a small card, each row on one of them and no variant on either", () => {
    const rows = [...(front?.rows ?? []), ...(back?.rows ?? [])].map(({ called }) => called);
    expect(rows).toEqual([...new Set(rows)]);
    const plain = whole?.rows.filter(({ phrase }) => phrase === "").map(({ called }) => called);
    expect(rows).toEqual(plain);
    expect([front?.identity.page, back?.identity.page]).toEqual(["page 1 of 2", "page 2 of 2"]);
  });

  test("leaves sources and dates to its back, and only warnings of the cautions", () => {
    expect(front?.identity.sources).toBe("");
    expect(back?.identity.sources).not.toBe("");
    expect(back?.cautions.every(({ signal }) => signal === "WARNING")).toBe(true);
  });
});

describe("a poster", () => {
  test("shows locking screws before the others and tells taps that are only for the asking", () => {
    const [poster] = posterSheets(minnow, "minnow");
    expect(poster?.families.map(({ name }) => name.split(":")[0])).toEqual([
      "Locking",
      "Plain-head",
    ]);
    const cells = poster?.families.flatMap(({ rows }) => rows.flatMap((row) => row.cells)) ?? [];
    expect(cells.find(({ noun }) => noun === "tap")?.note).toBe("if asked");
    expect(poster?.format.distance).toBe(2000);
  });
});
