import { drawBone } from "../../parts/bone.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import { pilotEnd, type StepDrawing } from "../../parts/scene.ts";
import { seatedTop } from "../../parts/seated-screw.ts";
import { drawScrew, drawTool, toolShape } from "../../parts/tool.ts";
import { turnArrow } from "../../parts/turn-arrow.ts";

/** The seated screw turned tight with shaft and handle alone. */
export const tightenByHand: StepDrawing = (pen, scene) => {
  const { parts } = scene;
  const top = seatedTop(scene);
  drawBone(pen, scene);
  drawPlateSection(pen, scene);
  const joint = top + 7;
  if (parts.driver) drawTool(pen, scene, toolShape(scene, parts.driver), top - 1.2, joint + 0.5);
  if (parts.handle) drawTool(pen, scene, toolShape(scene, parts.handle), joint);
  drawScrew(pen, scene, pilotEnd(scene), top);
  turnArrow(pen, scene);
};
