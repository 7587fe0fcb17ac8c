import { drawBone } from "../../parts/bone.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import { pilotEnd, pilotWidth, type StepDrawing } from "../../parts/scene.ts";
import { drawTool, toolShape } from "../../parts/tool.ts";
import { turnArrow } from "../../parts/turn-arrow.ts";

/** The tap turned into the drilled hole. */
export const tap: StepDrawing = (pen, scene) => {
  const { parts, bone } = scene;
  drawBone(pen, scene, [{ width: pilotWidth(scene), to: pilotEnd(scene) }]);
  drawPlateSection(pen, scene);
  if (parts.tap)
    drawTool(
      pen,
      scene,
      toolShape(scene, parts.tap),
      parts.nearCortexOnly ? bone.near - bone.cortex - 3 : bone.far + 1,
    );
  turnArrow(pen, scene);
};
