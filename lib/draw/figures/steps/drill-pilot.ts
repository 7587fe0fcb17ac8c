import { arrow } from "../../parts/arrow.ts";
import { drawBone } from "../../parts/bone.ts";
import { drawHolder } from "../../parts/drill-holder.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import { pilotEnd, pilotWidth, type StepDrawing } from "../../parts/scene.ts";
import { stopMark } from "../../parts/stop-mark.ts";
import { drawTool, toolShape } from "../../parts/tool.ts";

/** The pilot drill through its sleeve, guide or insert into the bone: both cortices, the near one only, or on along its line as far as the surgeon decides. */
export const drillPilot: StepDrawing = (pen, scene) => {
  const { parts, bone, width, height, plate, axis } = scene;
  const tip = pilotEnd(scene);
  drawBone(pen, scene);
  if (parts.drilled?.pilot === "surgeon-decides")
    pen.line([bone.far - 1.8, axis], [tip, axis], { stroke: "line", dash: "centre" });
  drawPlateSection(pen, scene);
  if (parts.drill) drawTool(pen, scene, toolShape(scene, parts.drill), tip);
  drawHolder(pen, scene, width - 7);
  if (parts.drilled?.pilot === "near-cortex") stopMark(pen, scene, tip, pilotWidth(scene));
  arrow(pen, [width - 1, height - 2], [plate.to + 5, height - 2]);
};
