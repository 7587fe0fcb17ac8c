import { arrow } from "../../parts/arrow.ts";
import { drawBone } from "../../parts/bone.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import type { StepDrawing } from "../../parts/scene.ts";
import { drawTool, toolShape } from "../../parts/tool.ts";

/** Sleeve, insert, guide or drill comes out of the plate. */
export const takeOut: StepDrawing = (pen, scene) => {
  const { parts, width, height, plate } = scene;
  drawBone(pen, scene);
  drawPlateSection(pen, scene);
  const tool = parts.takenOut;
  if (tool) drawTool(pen, scene, toolShape(scene, tool, parts.guideEnd), plate.to + 3.4);
  arrow(pen, [plate.to + 4, height - 2], [width - 1, height - 2]);
};
