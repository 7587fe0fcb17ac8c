import { arrow } from "../../parts/arrow.ts";
import { drawBone } from "../../parts/bone.ts";
import { drawHolder } from "../../parts/drill-holder.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import { glidingEnd, glidingWidth, type StepDrawing } from "../../parts/scene.ts";
import { stopMark } from "../../parts/stop-mark.ts";
import { drawTool, toolShape } from "../../parts/tool.ts";

/** The gliding drill opens the near cortex and stops there. */
export const drillGliding: StepDrawing = (pen, scene) => {
  const { parts, width, height, plate } = scene;
  const tip = glidingEnd(scene);
  drawBone(pen, scene);
  drawPlateSection(pen, scene);
  if (parts.drill) drawTool(pen, scene, toolShape(scene, parts.drill), tip);
  drawHolder(pen, { ...scene, parts: { ...parts, insert: undefined } }, width - 7);
  stopMark(pen, scene, tip, glidingWidth(scene));
  arrow(pen, [width - 1, height - 2], [plate.to + 5, height - 2]);
};
