import { drawBone } from "../../parts/bone.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import { pilotEnd, type StepDrawing, throughBone } from "../../parts/scene.ts";
import { drawTool, toolShape } from "../../parts/tool.ts";

/** The gauge rests on the plate, its hook behind the far cortex, or its tip at the end of a hole that does not go through; what lies between is read. */
export const measure: StepDrawing = (pen, scene) => {
  const { parts, bone, axis, height, plate, scale, width } = scene;
  const { gauge } = parts;
  drawBone(pen, scene);
  drawPlateSection(pen, scene);
  const hook = gauge?.kind === "depth-gauge" ? (gauge.hook / 1000) * scale : 2;
  const seat =
    gauge?.kind === "depth-gauge" && gauge.seat === "bone"
      ? bone.near
      : plate.to - (plate.to - plate.from) * 0.4;
  const through = throughBone(parts.drilled);
  const caught = through ? bone.far : pilotEnd(scene);
  const [top, tip] = [axis - hook / 2, through ? caught - 1.4 : caught];
  const hang = top + hook * (through ? 1.5 : 1);
  const rod = hook * 0.55;
  pen.polygon(
    [
      [seat, top],
      [tip, top],
      [tip, hang],
      [tip + 1, hang],
      [tip + 1, top + rod],
      [seat, top + rod],
    ],
    { fill: "metal", data: { edge: "hook" } },
  );
  if (gauge) {
    const { segments } = toolShape(scene, gauge);
    drawTool(pen, scene, { segments: segments.slice(1) }, seat);
  }
  const y = Math.max(2.2, axis - height * 0.36);
  pen.line([caught, y], [seat, y], { stroke: "heavy", data: { edge: "reading" } });
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
