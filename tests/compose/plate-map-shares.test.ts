import { describe, expect, test } from "vitest";
import { firstThatFits, type MapShare } from "../../lib/compose/plate-map-shares.ts";
import type { Figure } from "../../lib/model/figure.ts";
import type { PlateMapView } from "../../lib/model/sheet.ts";
import { demoSheets } from "../fixtures/demo-library.ts";

const figure = (height: number, fromSide = false): Figure => ({
  id: "f",
  svg: "<svg></svg>",
  title: "f",
  description: "f",
  width: 100,
  height,
  fromSide,
});
const way = (name: string, height: number, map: Figure) => (): MapShare & { map: Figure } => ({
  table: [{ label: name, kind: "", takes: "" }],
  traps: { title: "", lines: [] },
  height,
  map,
});
const taken = (
  ways: Parameters<typeof firstThatFits>[0],
  wanted?: Parameters<typeof firstThatFits>[1],
): string | undefined => firstThatFits(ways, wanted).table[0]?.label;

describe("a plate map that shares out its page", () => {
  test("takes the first way in which the map fits", () => {
    expect(taken([way("full", 40, figure(45)), way("high", 46, figure(45))])).toBe("high");
  });

  test("prefers a way that shows what is wanted, and else takes the first that fits", () => {
    const ways = [way("full", 40, figure(40)), way("lower", 44, figure(44, true))];
    expect(taken(ways, ({ map }) => map.fromSide === true)).toBe("lower");
    expect(taken(ways.slice(0, 1), ({ map }) => map.fromSide === true)).toBe("full");
  });

  test("is left higher than its room where no way fits, for the check of the page to find", () => {
    expect(taken([way("full", 40, figure(60)), way("high", 46, figure(60))])).toBe("high");
  });
});

describe("a plate map of the demo on A5", () => {
  const maps = demoSheets().filter(
    (sheet): sheet is PlateMapView =>
      sheet.kind === "plate-map" && sheet.format.id === "a5-landscape",
  );

  test("shows every plate from the side, in its map or beneath", () => {
    expect(maps.length).toBeGreaterThan(20);
    const bare = maps.filter(({ map, side }) => map.fromSide !== true && side === undefined);
    expect(bare.map(({ id }) => id)).toEqual([]);
  });

  test("names what a plate without a side is taken for, with what is seen on both", () => {
    for (const [id, words] of [
      [
        "pebblefin-plate-thin-shell-5",
        "Straight stiff plate (thickness 3.3 mm); here thickness 1.2 mm.",
      ],
      [
        "pebblefin-plate-straight-stiff-10",
        "Thin-shell plate (thickness 1.2 mm); here thickness 3.3 mm.",
      ],
    ] as const) {
      const map = maps.find((one) => one.id === id);
      expect(map?.traps.lines[0]?.subject).toBe("Looks alike:");
      expect(map?.traps.lines[0]?.words.replaceAll("\u00a0", " ")).toBe(words);
    }
  });

  test("calls one hole a hole", () => {
    const bands = maps.flatMap((map) => map.bands);
    const regions = new Map(bands.map(({ region, holes }) => [holes, region]));
    expect(regions.get("H5")).toBe("Head hole");
    expect(regions.get("H1–H4")).toBe("Head holes");
  });
});
