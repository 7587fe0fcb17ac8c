import { drawBone } from "../../parts/bone.ts";
import type { StepDrawing } from "../../parts/scene.ts";
import { drawTool, toolShape } from "../../parts/tool.ts";
import { turnArrow } from "../../parts/turn-arrow.ts";

/** The countersink cuts a seat into the near cortex; no plate lies there. */
export const countersink: StepDrawing = (pen, scene) => {
  const { parts, bone } = scene;
  drawBone(pen, scene);
  if (parts.countersink)
    drawTool(pen, scene, toolShape(scene, parts.countersink), bone.near - bone.cortex - 2);
  turnArrow(pen, scene);
};
