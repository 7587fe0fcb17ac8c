import { describe, expect, test } from "vitest";
import { plateSide } from "../../../lib/draw/figures/plate-side.ts";
import type { LaidPlate } from "../../../lib/model/laid-plate.ts";
import { libraryPlates } from "../library-plates.ts";
import { edgesOf, pointsOf, readSvg } from "../read-svg.ts";

const plates = libraryPlates;
const named = plates.map((plate) => [plate.id, plate] as const);
const side = { thickness: { head: 1600, shaft: 2400 }, bends: [] };
const scaleOf = (svg: string): number =>
  Number(
    readSvg(svg).find(({ attributes }) => attributes.class === "side")?.attributes["data-scale"],
  );
const straight = (): LaidPlate => {
  const found = plates.find(({ holes }) => holes.every(({ region }) => region === "shaft"));
  if (found === undefined) throw new Error("No straight plate");
  return found;
};

describe("a plate from the side", () => {
  test.each(named)(
    "of %s is as long and as thick as the data says, within 0.1 mm",
    (_id, plate) => {
      const { svg } = plateSide("s", plate, side, 190);
      const [body] = edgesOf(svg, "side");
      const xs = body === undefined ? [] : pointsOf(body).map(([x]) => x);
      const ys = body === undefined ? [] : pointsOf(body).map(([, y]) => y);
      const length = (Math.max(...xs) - Math.min(...xs)) / scaleOf(svg);
      const thick = (Math.max(...ys) - Math.min(...ys)) / scaleOf(svg);
      expect(length).toBeCloseTo((plate.bounds.max[0] - plate.bounds.min[0]) / 1000, 1);
      expect(thick).toBeCloseTo(2.4, 1);
    },
  );

  test.each(named)(
    "of %s draws the axis of every zone of every hole at its place",
    (_id, plate) => {
      const { svg } = plateSide("s", plate, side, 190);
      const axes = readSvg(svg).filter(({ attributes }) => attributes["data-axis"] !== undefined);
      const places = plate.holes.flatMap(({ label, zones }) =>
        zones.map(({ at }) => `${label} ${at[0] / 1000}`),
      );
      expect(
        axes.map(({ attributes }) => `${attributes["data-axis"]} ${attributes["data-at"]}`).sort(),
      ).toEqual(places.sort());
    },
  );

  test("names one thickness by itself, and head and shaft where they differ", () => {
    const thick = (thickness: { readonly head?: number; readonly shaft: number }) =>
      plateSide("s", straight(), { thickness, bends: [] }, 190).facts?.filter(([, value]) =>
        /thick|^3\.3/.test(value),
      );
    expect(thick({ shaft: 3300 })).toEqual([["thickness", "3.3 mm"]]);
    expect(thick({ head: 1600, shaft: 2400 })).toEqual([
      ["head", "1.6 mm thick"],
      ["shaft", "2.4 mm thick"],
    ]);
  });

  test("moves with its thickness", () => {
    const measure = (shaft: number): number => {
      const { svg } = plateSide("s", straight(), { thickness: { shaft }, bends: [] }, 190);
      const line = readSvg(svg).find(
        ({ attributes }) => attributes["data-dimension"] === "thickness",
      );
      const [from, to] = line === undefined ? [] : pointsOf(line);
      return Math.abs((to?.[1] ?? 0) - (from?.[1] ?? 0)) / scaleOf(svg);
    };
    expect(measure(1200)).toBeCloseTo(1.2, 2);
    expect(measure(3300)).toBeCloseTo(3.3, 2);
  });

  test("marks where it may be bent, between the holes and clear of them", () => {
    const plate = straight();
    const [one, other] = plate.holes;
    if (one === undefined || other === undefined) throw new Error("Too few holes");
    const bent = { ...side, bends: [[one.label, other.label]] as const };
    const { svg, facts } = plateSide("s", plate, bent, 190);
    const zone = readSvg(svg).find(({ attributes }) => attributes["data-bend"] !== undefined);
    const [from = 0, to = 0] = (zone?.attributes["data-bend"] ?? "").split(" ").map(Number);
    expect(from).toBeGreaterThan(one.at[0] / 1000);
    expect(to).toBeLessThan(other.at[0] / 1000);
    expect(from).toBeLessThan(to);
    expect(facts).toContainEqual(["bend zones", `${one.label} to ${other.label}`]);
    expect(plateSide("s", plate, side, 190).svg).not.toContain("data-bend");
  });
});
