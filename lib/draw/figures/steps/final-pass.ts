import { driveOf, driveView } from "../../parts/drive-view.ts";
import type { StepDrawing } from "../../parts/scene.ts";
import { tickBox } from "../../parts/tick-box.ts";

const screws = 4;

/** Every screw in turn, a box to tick for each. */
export const finalPass: StepDrawing = (pen, { width, height, parts, interfaces }) => {
  const step = width / screws;
  const head = Math.min(height * 0.21, step * 0.36);
  const drive = parts.screw?.drive;
  const view =
    drive === undefined ? undefined : driveView(driveOf(interfaces, drive).form, head * 1.1);
  const box = height * 0.3;
  pen.box(
    [0.5, height * 0.04],
    width - 1,
    height * 0.52,
    { fill: "metal", stroke: "bold" },
    height * 0.2,
  );
  for (let index = 0; index < screws; index++) {
    const x = step * (index + 0.5);
    const y = height * 0.3;
    pen.circle([x, y], head, { fill: "metal", stroke: "bold" });
    view?.draw(pen, [x, y]);
    tickBox(pen, [x - box / 2, height * 0.66], box, index < 2);
  }
};
