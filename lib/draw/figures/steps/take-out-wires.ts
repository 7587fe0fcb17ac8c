import { arrow } from "../../parts/arrow.ts";
import { drawBone } from "../../parts/bone.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import type { StepDrawing } from "../../parts/scene.ts";

/** The temporary wires drawn out of plate and bone. */
export const takeOutWires: StepDrawing = (pen, scene) => {
  const { bone, plate, axis, scale, width, height } = scene;
  const thick = 1.6 * scale;
  const gap = Math.min(4.2, height * 0.22);
  drawBone(pen, scene);
  drawPlateSection(pen, { ...scene, parts: { plateThickness: scene.parts.plateThickness, zone: undefined, screw: undefined } });
  pen.box([plate.from - 0.2, 0.3], plate.to - plate.from + 0.4, height - 0.6, { fill: "metal", stroke: "none" });
  for (const x of [plate.from, plate.to]) pen.line([x, 0.3], [x, height - 0.3], { stroke: "bold" });
  for (const [at, y] of [axis - gap, axis + gap].entries()) {
    const tip = at === 0 ? plate.to + 2 : bone.near - 8;
    const end = at === 0 ? width - 8 : width - 9;
    pen.polygon([[end, y - thick / 2], [tip + 2, y - thick / 2], [tip, y], [tip + 2, y + thick / 2], [end, y + thick / 2]], { fill: "metal", stroke: "line" });
    arrow(pen, [end + 1, y], [width - 1, y]);
  }
};
