import { describe, expect, test } from "vitest";
import { drawFigure, type Pen } from "../../lib/draw/canvas.ts";
import { readSvg } from "./read-svg.ts";

const about = { title: "A & B", description: "Two <things>", width: 20, height: 10 };
const draw = (scribble: (pen: Pen) => void): string => drawFigure("f", about, scribble).svg;

describe("a figure", () => {
  test("is sized in millimetres and named by its own title and description", () => {
    const [root, title, description] = readSvg(draw(() => {}));
    expect(root?.attributes).toMatchObject({
      width: "20mm",
      height: "10mm",
      viewBox: "0 0 20 10",
      id: "f",
      role: "img",
      "aria-labelledby": "f-title f-desc",
    });
    expect(title).toMatchObject({ name: "title", attributes: { id: "f-title" } });
    expect(description).toMatchObject({ name: "desc", attributes: { id: "f-desc" } });
    expect(draw(() => {})).toContain("A &amp; B");
  });

  test.each([
    ["a third of a millimetre", 1 / 3, "0.333"],
    ["a sum that floating point spoils", 0.1 + 0.2, "0.3"],
    ["a negative zero", -0, "0"],
  ])("rounds %s", (_what, value, written) => {
    const line = readSvg(draw((pen) => pen.line([value, 0], [1, 1]))).find(
      ({ name }) => name === "line",
    );
    expect(line?.attributes.x1).toBe(written);
  });

  test.each([
    ["not a number", Number.NaN],
    ["infinite", Number.POSITIVE_INFINITY],
  ])("refuses a length that is %s", (_what, value) => {
    expect(() => draw((pen) => pen.circle([0, 0], value))).toThrow("A drawing holds the number");
    expect(() => draw((pen) => pen.path([["M", value, 0]]))).toThrow("A drawing holds the number");
    expect(() => draw((pen) => pen.polygon([[0, value]]))).toThrow("A drawing holds the number");
    expect(() => draw((pen) => pen.group("g", { at: [value, 0] }, () => {}))).toThrow(
      "A drawing holds the number",
    );
  });

  test("scales shapes and keeps line widths and words", () => {
    const drawn = readSvg(
      draw((pen) =>
        pen.group("g", { scale: 0.5 }, (inner) => {
          inner.line([0, 0], [10, 0]);
          inner.words([4, 2], "drill", { size: 4 });
        }),
      ),
    );
    expect(drawn.find(({ name }) => name === "line")?.attributes).toMatchObject({
      x2: "5",
      "stroke-width": "0.35",
    });
    expect(drawn.find(({ name }) => name === "text")?.attributes).toMatchObject({
      x: "2",
      "font-size": "4",
    });
  });

  test("mirrors an arc's way round with its shape", () => {
    const svg = draw((pen) =>
      pen.group("g", { scale: [-1, 1] }, (inner) =>
        inner.path([
          ["M", 0, 0],
          ["A", 2, 0, 1, 4, 0],
        ]),
      ),
    );
    expect(svg).toContain('d="M0 0A2 2 0 0 0 -4 0"');
  });

  test("uses presentation attributes alone", () => {
    const svg = draw((pen) => {
      pen.box([0, 0], 2, 2, { fill: "metal", dash: "hidden", data: { part: "box" } });
    });
    expect(svg).not.toContain("style=");
    expect(svg).not.toContain("svgjs");
  });

  test("draws many dots as one path of round ends, as wide in a scaled group as outside", () => {
    const svg = draw((pen) =>
      pen.group("g", { scale: 2 }, (inner) =>
        inner.dots(
          [
            [1, 1],
            [2, 1.5],
          ],
          0.4,
        ),
      ),
    );
    expect(svg).toContain('stroke-linecap="round"');
    expect(readSvg(svg).filter(({ name }) => name === "path")).toMatchObject([
      { attributes: { d: "M2 2h0.01M4 3h0.01", fill: "none", "stroke-width": "0.4" } },
    ]);
  });
});
