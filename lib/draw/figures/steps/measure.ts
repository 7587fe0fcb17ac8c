import { drawBone } from "../../parts/bone.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import { pilotEnd, pilotWidth, type StepDrawing } from "../../parts/scene.ts";
import { drawTool, toolShape } from "../../parts/tool.ts";

/** The gauge rests on the plate, its hook behind the far cortex; what lies between is read. */
export const measure: StepDrawing = (pen, scene) => {
  const { parts, bone, axis, height, plate, scale, width } = scene;
  const { gauge } = parts;
  drawBone(pen, scene, [{ width: pilotWidth(scene), to: pilotEnd(scene) }]);
  drawPlateSection(pen, scene);
  const hook = gauge?.kind === "depth-gauge" ? (gauge.hook / 1000) * scale : 2;
  const seat =
    gauge?.kind === "depth-gauge" && gauge.seat === "bone"
      ? bone.near
      : plate.to - (plate.to - plate.from) * 0.4;
  const caught = parts.nearCortexOnly ? bone.near - bone.cortex : bone.far;
  const [top, tip] = [axis - hook / 2, caught - 1.4];
  const rod = hook * 0.55;
  pen.polygon(
    [
      [seat, top],
      [tip, top],
      [tip, top + hook * 1.5],
      [tip + 1, top + hook * 1.5],
      [tip + 1, top + rod],
      [seat, top + rod],
    ],
    { fill: "metal" },
  );
  if (gauge) {
    const { segments } = toolShape(scene, gauge);
    drawTool(pen, scene, { segments: segments.slice(1) }, seat);
  }
  const y = Math.max(2.2, axis - height * 0.36);
  pen.line([caught, y], [seat, y], { stroke: "heavy" });
  for (const x of [caught, seat]) pen.line([x, y - 1.6], [x, y + 1.6], { stroke: "heavy" });
  const [x, under] = [width * 0.78, axis + 3.5 * scale + 0.6];
  pen.polygon(
    [
      [x, under],
      [x - 1.3, under + 2.6],
      [x + 1.3, under + 2.6],
    ],
    { fill: "ink", stroke: "none" },
  );
};
