import { arrow } from "../../parts/arrow.ts";
import { drawBone } from "../../parts/bone.ts";
import { drawHolder } from "../../parts/drill-holder.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import { glidingWidth, pilotEnd, pilotWidth, type StepDrawing } from "../../parts/scene.ts";
import { drawTool, toolShape } from "../../parts/tool.ts";

/** The pilot drill through its sleeve, guide or insert into the bone: both cortices, or the near one only. */
export const drillPilot: StepDrawing = (pen, scene) => {
  const { parts, bone, width, height, plate } = scene;
  const tip = pilotEnd(scene) - 0.6;
  const pilot = { width: pilotWidth(scene), to: tip };
  const gliding = { width: glidingWidth(scene), to: bone.near - bone.cortex };
  drawBone(pen, scene, parts.insert ? [pilot, gliding] : [pilot]);
  drawPlateSection(pen, scene);
  if (parts.drill) drawTool(pen, scene, toolShape(scene, parts.drill), tip);
  drawHolder(pen, scene, width - 7);
  arrow(pen, [width - 1, height - 2], [plate.to + 5, height - 2]);
};
