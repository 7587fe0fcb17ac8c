import { expect, test } from "vitest";
import { plateOutline } from "../../../lib/draw/figures/plate-outline.ts";
import { plates } from "../plates.ts";
import { readMap } from "../read-map.ts";

test.each(plates)(
  "the outline of $id is as wide as asked, in true proportion, with every hole at its place",
  (plate) => {
    const figure = plateOutline("outline", plate, 60);
    const { holes, scale } = readMap(figure.svg);
    expect(figure.width).toBe(60);
    expect(holes.map((hole) => hole.label)).toEqual(plate.holes.map((hole) => hole.label));
    const [first, last] = [holes[0], holes.at(-1)];
    if (!first || !last) throw new Error("no holes");
    expect(last.x - first.x).toBeCloseTo(((last.dataX - first.dataX) / 1000) * scale, 2);
    expect(last.y - first.y).toBeCloseTo(((last.dataY - first.dataY) / 1000) * scale, 2);
  },
);
