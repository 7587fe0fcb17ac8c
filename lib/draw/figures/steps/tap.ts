import { drawBone } from "../../parts/bone.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import { pilotEnd, type Scene, type StepDrawing } from "../../parts/scene.ts";
import { drawTool, toolShape } from "../../parts/tool.ts";
import { turnArrow } from "../../parts/turn-arrow.ts";

/** Where the tap's tip stands: through the near cortex only where the technique says so, else at the end of the hole. */
function tapEnd(scene: Scene): number {
  const { bone, parts } = scene;
  const end = Math.max(pilotEnd(scene) + 0.6, bone.far + 1);
  return parts.drilled?.tapped === "near-cortex" ? Math.max(end, bone.near - bone.cortex - 3) : end;
}

/** The tap turned into the drilled hole. */
export const tap: StepDrawing = (pen, scene) => {
  drawBone(pen, scene);
  drawPlateSection(pen, scene);
  if (scene.parts.tap) drawTool(pen, scene, toolShape(scene, scene.parts.tap), tapEnd(scene));
  turnArrow(pen, scene);
};
