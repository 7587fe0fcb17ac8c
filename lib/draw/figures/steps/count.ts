import type { StepDrawing } from "../../parts/scene.ts";

/** A tally: four strokes and one across, then a line to write the number on. */
export const count: StepDrawing = (pen, { width, height }) => {
  const [top, bottom] = [height * 0.16, height * 0.84];
  const gap = Math.min(3.6, width * 0.08);
  const tally = (left: number, strokes: number): void => {
    for (let index = 0; index < Math.min(strokes, 4); index++) pen.line([left + index * gap, top], [left + index * gap, bottom], { stroke: "heavy" });
    if (strokes === 5) pen.line([left - gap * 0.8, bottom - 1], [left + gap * 3.8, top + 1], { stroke: "heavy" });
  };
  tally(width * 0.09, 5);
  tally(width * 0.45, 3);
  const side = height * 0.5;
  pen.words([width * 0.69, height * 0.61], "=", { size: 6.5, weight: 700, anchor: "middle" });
  pen.box([width * 0.97 - side, (height - side) / 2], side, side, { fill: "metal", stroke: "bold" });
};
