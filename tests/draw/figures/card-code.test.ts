import { createRequire } from "node:module";
import type jsqr from "jsqr";
import { expect, test } from "vitest";
import { cardCode } from "../../../lib/draw/figures/card-code.ts";
import { readSvg } from "../read-svg.ts";

const decode: typeof jsqr.default = createRequire(import.meta.url)("jsqr").default;
const quiet = 4;

/** The drawn rectangles as an RGBA picture of `dots` pixels a millimetre, white paper around. */
function rastered(svg: string, dots: number): { data: Uint8ClampedArray; side: number } {
  const side = Math.round((10 + 2 * quiet) * dots);
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  const path = readSvg(svg).find(({ attributes }) => attributes["data-part"] === "card-code");
  for (const piece of (path?.attributes["d"] ?? "").split("Z").filter((text) => text !== "")) {
    const numbers = piece.match(/-?[\d.]+/g)?.map(Number) ?? [];
    const [xs, ys] = [0, 1].map((odd) => numbers.filter((_, index) => index % 2 === odd));
    const span = (of: readonly number[] = []) =>
      [Math.min(...of), Math.max(...of)].map((mm) => Math.round((mm + quiet) * dots));
    const [[left = 0, right = 0], [top = 0, bottom = 0]] = [span(xs), span(ys)] as [
      number[],
      number[],
    ];
    for (let y = top; y < bottom; y += 1)
      for (let x = left; x < right; x += 1)
        data.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3);
  }
  return { data, side };
}

function read(text: string, dots: number): string | undefined {
  const { data, side } = rastered(cardCode("c", text).svg, dots);
  return decode(data, side, side)?.data;
}

test.each([
  ["a short name", "DEMO-PF-CASE-A C BAE44B60"],
  ["a long name", "DEMO-GP-STEPS-LOCKING-THROUGH-SLEEVE-LOCKING-50 A A8AB2C85"],
  ["small letters and an accent", "démo plate map 3"],
])("Another library reads %s from the drawn code.", (_title, text) => {
  expect(read(text, 20)).toBe(text);
});

test("The code can be read at 300 dots an inch, and is always 10 mm wide.", () => {
  const text = "DEMO-PF-PAIRING-PLATES C 1A646BE1";
  expect(read(text, 300 / 25.4)).toBe(text);
  expect(cardCode("c", text)).toMatchObject({ width: 10, height: 10 });
  expect(cardCode("c", text.repeat(2))).toMatchObject({ width: 10, height: 10 });
});
