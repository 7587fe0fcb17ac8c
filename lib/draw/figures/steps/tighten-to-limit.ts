import { nm } from "../../../model/measure.ts";
import { drawPlateSection } from "../../parts/plate-section.ts";
import type { StepDrawing } from "../../parts/scene.ts";
import { seatedTop } from "../../parts/seated-screw.ts";
import { signalMark } from "../../parts/signal-mark.ts";
import { drawScrew, drawTool, toolShape } from "../../parts/tool.ts";
import { beforeTurn, turnArrow } from "../../parts/turn-arrow.ts";

/** Shaft, limiter and handle on the seated screw, turned until the limiter signals once; the bone is left out for room. */
export const tightenToLimit: StepDrawing = (pen, scene) => {
  const { parts, width, height, plate } = scene;
  const shift = plate.from - width * 0.17;
  const near = {
    ...scene,
    scale: scene.scale * 0.8,
    axis: (height + 6.2) / 2,
    plate: { from: plate.from - shift, to: plate.to - shift },
  };
  const top = seatedTop(near);
  drawPlateSection(pen, near);
  const [joint, grip] = [top + 4.5, width * 0.72];
  if (parts.driver) drawTool(pen, near, toolShape(near, parts.driver), top - 1.2, joint + 0.4);
  if (parts.limiter) drawTool(pen, near, toolShape(near, parts.limiter), joint, grip + 0.4);
  if (parts.handle) drawTool(pen, near, toolShape(near, parts.handle), grip, beforeTurn(near));
  drawScrew(pen, near, Math.max(0.6, near.plate.from - 7), top);
  signalMark(pen, [near.plate.to + 4.4, 3.1]);
  turnArrow(pen, near);
  const { limiter } = parts;
  if (limiter?.kind === "torque-limiter")
    pen.words([near.plate.to + 8.6, 4.5], `${nm(limiter.torque)} N·m`, {
      size: "body",
      weight: 700,
    });
};
