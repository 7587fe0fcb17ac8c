import { nm } from "../../../model/measure.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import { drawBone } from "../../parts/bone.ts";
import { pilotWidth, type StepDrawing } from "../../parts/scene.ts";
import { seatedTop } from "../../parts/seated-screw.ts";
import { signalMark } from "../../parts/signal-mark.ts";
import { drawScrew, drawTool, toolShape } from "../../parts/tool.ts";

/** Shaft, limiter and handle on the seated screw, turned until the limiter signals once. */
export const tightenToLimit: StepDrawing = (pen, scene) => {
  const { parts, width, height, axis, bone, plate } = scene;
  const shift = bone.near * 0.52;
  const near = { ...scene, bone: { ...bone, far: bone.far - shift - 2.4, near: bone.near - shift }, plate: { from: plate.from - shift, to: plate.to - shift } };
  const top = seatedTop(near);
  drawBone(pen, near, [{ width: pilotWidth(scene), to: near.bone.far - 4 }]);
  drawPlateSection(pen, near);
  const [first, second] = [top + 4.5, width - 9];
  if (parts.driver) drawTool(pen, near, toolShape(near, parts.driver), top - 1.2, first + 0.4);
  if (parts.limiter) drawTool(pen, near, toolShape(near, parts.limiter), first, second + 0.4);
  if (parts.handle) drawTool(pen, near, toolShape(near, parts.handle), second);
  drawScrew(pen, near, near.bone.near - 9, top);
  signalMark(pen, [width - 5.4, 3.4]);
  const { limiter } = parts;
  if (limiter?.kind === "torque-limiter") pen.words([near.plate.to + 2.2, height - 0.9], `${nm(limiter.torque)} N·m`, { size: "body", weight: 700 });
  void axis;
};
