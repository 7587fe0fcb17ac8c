import { arrow } from "../../parts/arrow.ts";
import { boneDots, boneFoot, boxRim, notAnatomy } from "../../parts/bone.ts";
import type { StepDrawing } from "../../parts/scene.ts";

/** Two pieces of bone under the plate; the gap between them closes. */
export const watchGap: StepDrawing = (pen, { width, height, scale, parts }) => {
  const thick = Math.max(2, Math.min(((parts.plateThickness ?? 3000) / 1000) * scale, 3.6));
  const [top, gap] = [height * 0.36, 1.6];
  const middle = width / 2;
  for (const [from, to] of [
    [0.6, middle - gap],
    [middle + gap, width - 0.6],
  ] as const) {
    const tall = boneFoot(height) - top;
    boneDots(pen, "marrow", boxRim([from, top], to - from, tall));
    pen.box([from, top], to - from, tall, { stroke: "bold" });
  }
  pen.box([2.5, top - thick], width - 5, thick, { fill: "metal", stroke: "bold" });
  const head = ((parts.screw?.head.diameter ?? 6000) / 1000) * scale;
  for (const x of [width * 0.2, width * 0.78]) {
    pen.path(
      [
        ["M", x - head / 2, top - thick],
        [
          "C",
          x - head / 2,
          top - thick - 2.4,
          x + head / 2,
          top - thick - 2.4,
          x + head / 2,
          top - thick,
        ],
        ["Z"],
      ],
      { fill: "metal", stroke: "bold" },
    );
  }
  const y = top + (height - top) * 0.36;
  for (const side of [-1, 1] as const) {
    pen.box([side < 0 ? middle - gap - 10 : middle + gap + 1.2, y - 1.7], 8.8, 3.4, {
      fill: "metal",
      stroke: "none",
    });
    arrow(pen, [middle + side * (gap + 9.6), y], [middle + side * (gap + 1.6), y]);
  }
  notAnatomy(pen, [1.4, height], middle - gap - 2.6);
};
