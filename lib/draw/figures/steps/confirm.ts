import type { StepDrawing } from "../../parts/scene.ts";
import { tickBox } from "../../parts/tick-box.ts";

/** An eye, and a box to tick; what it looks at the step's words say. */
export const confirm: StepDrawing = (pen, { width, height }) => {
  const y = height / 2;
  const eye = width * 0.3;
  const side = Math.min(height * 0.5, width * 0.22);
  const box = width * 0.6;
  const [reach, lid] = [width * 0.12, height * 0.3];
  pen.path(
    [
      ["M", eye - reach, y],
      ["C", eye - reach * 0.5, y - lid, eye + reach * 0.5, y - lid, eye + reach, y],
      ["C", eye + reach * 0.5, y + lid, eye - reach * 0.5, y + lid, eye - reach, y],
      ["Z"],
    ],
    { fill: "metal", stroke: "bold" },
  );
  pen.circle([eye, y], lid * 0.5, { fill: "metal", stroke: "bold" });
  pen.circle([eye, y], lid * 0.24, { fill: "ink", stroke: "none" });
  pen.line([eye + reach + 1.2, y], [box - 1.2, y], { stroke: "bold", dash: "hidden" });
  tickBox(pen, [box, y - side / 2], side, true);
};
