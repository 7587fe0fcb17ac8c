import { drawBone } from "../../parts/bone.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import { pilotEnd, type StepDrawing } from "../../parts/scene.ts";
import { drawScrew, drawTool, toolShape } from "../../parts/tool.ts";
import { turnArrow } from "../../parts/turn-arrow.ts";

/** The screw on its driver, on the way in. */
export const driveScrew: StepDrawing = (pen, scene) => {
  const { parts, plate, scale } = scene;
  const top = plate.to + ((parts.screw?.head.height ?? 2500) / 1000) * scale + 1.6;
  drawBone(pen, scene);
  drawPlateSection(pen, scene);
  if (parts.driver) drawTool(pen, scene, toolShape(scene, parts.driver), top - 1.2);
  drawScrew(pen, scene, pilotEnd(scene) + 5, top);
  turnArrow(pen, scene);
};
