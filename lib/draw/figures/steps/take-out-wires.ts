import { arrow } from "../../parts/arrow.ts";
import { drawBone } from "../../parts/bone.ts";
import { drawSolidPlate } from "../../parts/plate-section.ts";
import type { StepDrawing } from "../../parts/scene.ts";

/** The temporary wires drawn out of plate and bone. */
export const takeOutWires: StepDrawing = (pen, scene) => {
  const { bone, plate, axis, scale, width, height } = scene;
  const thick = 1.6 * scale;
  const gap = Math.min(4.2, height * 0.22);
  drawBone(pen, scene);
  drawSolidPlate(pen, scene);
  for (const [at, y] of [axis - gap, axis + gap].entries()) {
    const tip = at === 0 ? plate.to + 2 : bone.near - 8;
    const end = at === 0 ? width - 8 : width - 9;
    pen.polygon(
      [
        [end, y - thick / 2],
        [tip + 2, y - thick / 2],
        [tip, y],
        [tip + 2, y + thick / 2],
        [end, y + thick / 2],
      ],
      { fill: "metal", stroke: "line" },
    );
    arrow(pen, [end + 1, y], [width - 1, y]);
  }
};
