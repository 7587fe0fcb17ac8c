import { describe, expect, test } from "vitest";
import { drawFigure } from "../../lib/draw/canvas.ts";
import { driveView } from "../../lib/draw/parts/drive-view.ts";
import { demo } from "../fixtures/demo-library.ts";

/** Outer diameter A and inner diameter B of the hexalobular internal drive by its number, mm: nominal values of ISO 10664, not read
 * there, as tabulated in the open CAD library BOSL2, screw_drive.scad. */
const drives = [
  [5, 1.48, 1.08],
  [6, 1.75, 1.27],
  [7, 2.08, 1.5],
  [8, 2.4, 1.75],
  [9, 2.58, 1.87],
  [10, 2.8, 2.05],
  [15, 3.35, 2.4],
  [20, 3.95, 2.85],
  [25, 4.5, 3.25],
  [27, 5.07, 3.65],
  [30, 5.6, 4.05],
] as const;
const outer = new Map<number, number>(drives.map(([number, a]) => [number, a]));

const registered = Object.values(demo.catalogue.interfaces.drives).map(({ name, across }) => ({
  name,
  number: Number(/^hexalobular (\d+)$/.exec(name)?.[1]),
  across: across / 1000,
}));

describe("hexalobular drives", () => {
  test.each(registered)("$name of the demo is $across mm across", ({ number, across }) => {
    expect(across).toBe(outer.get(number));
  });

  test.each(drives)(
    "number %i is drawn %f mm across and %f mm within, to a fiftieth",
    (_number, a, b) => {
      const about = { title: "Drive", description: "Drive", width: 8, height: 8 };
      const { svg } = drawFigure("d", about, (pen) =>
        driveView("hexalobular", a).draw(pen, [4, 4]),
      );
      const [, path = ""] = /<path[^>]* d="([^"]+)"/.exec(svg) ?? [];
      const spots = [...path.matchAll(/(-?[\d.]+)[ ,](-?[\d.]+)/g)].map(([, x, y]) =>
        Math.hypot(Number(x), Number(y)),
      );
      expect(spots.length).toBeGreaterThan(60);
      expect(2 * Math.max(...spots)).toBeCloseTo(a, 2);
      expect(Math.abs((2 * Math.min(...spots)) / b - 1)).toBeLessThan(0.02);
    },
  );
});
