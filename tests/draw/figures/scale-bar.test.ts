import { expect, test } from "vitest";
import { scaleBar } from "../../../lib/draw/figures/scale-bar.ts";
import { edgesOf, extent, pointsOf } from "../read-svg.ts";

test("The scale bar is exactly 50 mm long with a tick every 10 mm, and says so.", () => {
  const { svg, width } = scaleBar("s");
  const [bar] = edgesOf(svg, "bar");
  expect(bar && extent(bar, 0)).toBe(50);
  expect(edgesOf(svg, "tick").map((tick) => pointsOf(tick)[0]?.[0])).toEqual([
    0, 10, 20, 30, 40, 50,
  ]);
  expect(svg).toContain("50 mm: print at 100 %");
  expect(svg).toContain(`width="${width}mm"`);
  expect(svg).toContain(`viewBox="0 0 ${width} `);
});
