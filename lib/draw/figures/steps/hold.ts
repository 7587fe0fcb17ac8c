import type { Pen, Spot } from "../../canvas.ts";
import { arrow } from "../../parts/arrow.ts";
import { drawBone } from "../../parts/bone.ts";
import { drawSolidPlate } from "../../parts/plate-section.ts";
import type { StepDrawing } from "../../parts/scene.ts";

/** One blade from the joint to its tip, a crescent. */
function blade(pen: Pen, [jx, jy]: Spot, [tx, ty]: Spot, bulge: number): void {
  const out = tx + bulge;
  pen.path(
    [
      ["M", jx, jy - 1.4],
      ["C", jx + (out - jx) * 0.7, jy - 1.4, out, jy, out, ty - 2.4],
      ["L", tx, ty],
      ["C", out - bulge * 0.55, ty - 3.5, out - bulge * 0.8, jy + 1.6, jx, jy + 1.4],
      ["Z"],
    ],
    { fill: "metal", stroke: "bold" },
  );
}

/** An arrow with less room than this is left out, mm. */
const leastArrow = 5;

/** Plate and bone held together between the points of a forceps. */
export const hold: StepDrawing = (pen, scene) => {
  const { bone, plate, axis, width } = scene;
  const shifted = {
    ...scene,
    bone: { ...bone, far: bone.far + 3.6, near: bone.near + 3.6 },
    plate: { from: plate.from + 3.6, to: plate.to + 3.6 },
  };
  drawBone(pen, shifted);
  drawSolidPlate(pen, shifted);
  const joint: Spot = [(shifted.bone.far + shifted.plate.to) / 2, 3];
  const at = axis + 1;
  blade(pen, joint, [shifted.bone.far - 0.2, at], -4.2);
  blade(pen, joint, [shifted.plate.to + 0.2, at], 4.2);
  pen.circle(joint, 1.9, { fill: "metal", stroke: "bold" });
  const point = shifted.plate.to + 5;
  if (width - point >= leastArrow) arrow(pen, [width - 0.8, at], [point, at]);
};
