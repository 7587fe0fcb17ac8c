import { arrow } from "../../parts/arrow.ts";
import { drawBone } from "../../parts/bone.ts";
import { drawHolder } from "../../parts/drill-holder.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import { glidingWidth, type StepDrawing } from "../../parts/scene.ts";
import { drawTool, toolShape } from "../../parts/tool.ts";

/** The gliding drill opens the near cortex and stops there. */
export const drillGliding: StepDrawing = (pen, scene) => {
  const { parts, bone, width, height, plate, axis } = scene;
  const tip = bone.near - bone.cortex - 1;
  const reach = glidingWidth(scene) / 2 + 2;
  drawBone(pen, scene, [{ width: glidingWidth(scene), to: tip }]);
  drawPlateSection(pen, scene);
  if (parts.drill) drawTool(pen, scene, toolShape(scene, parts.drill), tip);
  drawHolder(pen, { ...scene, parts: { ...parts, insert: undefined } }, width - 7);
  pen.line([tip - 1, axis - reach], [tip - 1, axis + reach], { stroke: "heavy" });
  arrow(pen, [width - 1, height - 2], [plate.to + 5, height - 2]);
};
