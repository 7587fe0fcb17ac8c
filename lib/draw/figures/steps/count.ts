import type { StepDrawing } from "../../parts/scene.ts";

/** A tally, four strokes and one across and three more, and a box to write the number in. */
export const count: StepDrawing = (pen, { width, height }) => {
  const [top, bottom] = [height * 0.16, height * 0.84];
  const gap = width * 0.07;
  const strokes = (left: number, many: number): void => {
    for (let index = 0; index < many; index++)
      pen.line([left + index * gap, top], [left + index * gap, bottom], { stroke: "heavy" });
  };
  const first = width * 0.09;
  strokes(first, 4);
  pen.line([first - gap * 0.8, bottom - 1.5], [first + gap * 3.8, top + 1.5], { stroke: "heavy" });
  strokes(width * 0.46, 3);
  const side = height * 0.56;
  pen.box([width * 0.97 - side, (height - side) / 2], side, side, {
    fill: "metal",
    stroke: "bold",
  });
};
